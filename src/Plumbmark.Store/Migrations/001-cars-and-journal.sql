-- A car is nothing but its journal; this row gives it an address that is never used again.
CREATE TABLE car (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    created_at TEXT NOT NULL,
    binned_at  TEXT -- null while the car stands in the shed; a car in the bin keeps its journal
) STRICT;

-- What was done to a car, in order. Rows are only ever added.
CREATE TABLE entry (
    car      INTEGER NOT NULL REFERENCES car (id),
    sequence INTEGER NOT NULL, -- the order that counts: 1, 2, 3 for each car, without gaps
    together INTEGER NOT NULL, -- sequence of the first entry that was sent with this one: an undo takes all of them back
    id       TEXT NOT NULL,    -- given where the entry was written, so that one sent twice is kept once
    at       TEXT NOT NULL,    -- by the clock of the device that wrote it; says when, never in which order
    by       TEXT,
    act      TEXT NOT NULL,    -- JSON, as ActJson writes it
    PRIMARY KEY (car, sequence),
    UNIQUE (car, id)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'A journal entry is never changed.');
END;

CREATE TRIGGER entry_is_never_removed BEFORE DELETE ON entry
BEGIN
    SELECT RAISE(ABORT, 'A journal entry is never removed.');
END;
