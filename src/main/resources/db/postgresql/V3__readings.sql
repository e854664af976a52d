CREATE TABLE readings (
  trip        TEXT NOT NULL REFERENCES trips (id) ON DELETE CASCADE,
  id          TEXT NOT NULL,
  place       BIGINT NOT NULL,
  split       TEXT,
  at          BIGINT NOT NULL,
  by_role     TEXT NOT NULL,
  by_hiker    TEXT,
  sealed      BYTEA NOT NULL,
  PRIMARY KEY (trip, id),
  UNIQUE (trip, place)
);
