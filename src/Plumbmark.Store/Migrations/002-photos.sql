-- Pictures kept with a car, for the cards of its parts. The journal names them; a picture that no card names any more is kept, because an act can be undone.
CREATE TABLE photo (
    car          INTEGER NOT NULL REFERENCES car (id),
    name         TEXT NOT NULL,    -- from the content, so that the same picture sent twice is kept once
    content_type TEXT NOT NULL,
    added_at     TEXT NOT NULL,
    bytes        BLOB NOT NULL,    -- as it is shown: turned upright, without where and when it was taken
    PRIMARY KEY (car, name)
) STRICT;

CREATE TRIGGER photo_is_never_changed BEFORE UPDATE ON photo
BEGIN
    SELECT RAISE(ABORT, 'A photo is never changed.');
END;
