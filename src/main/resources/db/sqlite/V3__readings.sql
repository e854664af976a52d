CREATE TABLE readings (
  trip        TEXT NOT NULL REFERENCES trips (id) ON DELETE CASCADE,
  id          TEXT NOT NULL,
  place       INTEGER NOT NULL,
  split       TEXT,
  at          INTEGER NOT NULL,
  by_role     TEXT NOT NULL,
  by_hiker    TEXT,
  sealed      BLOB NOT NULL,
  PRIMARY KEY (trip, id),
  UNIQUE (trip, place)
) STRICT;
