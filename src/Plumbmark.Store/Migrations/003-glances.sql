-- What the list of cars shows of each, so that a long list need not read every journal. Worked out from the journal and never believed against it:
-- a row whose sequence is not the journal's last is worked out again.
CREATE TABLE glance (
    car      INTEGER PRIMARY KEY REFERENCES car (id),
    sequence INTEGER NOT NULL, -- the last entry that it knows
    name     TEXT NOT NULL,
    serial   TEXT,
    points   INTEGER NOT NULL,
    readings INTEGER NOT NULL, -- those that stand
    verdict  TEXT,             -- as the Floor said; null while nobody has asked
    told_by  TEXT              -- the version that said it: another may say otherwise
) STRICT;
