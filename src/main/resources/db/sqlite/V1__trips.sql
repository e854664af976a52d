CREATE TABLE trips (
  id          TEXT PRIMARY KEY,
  head        INTEGER NOT NULL,
  payer       TEXT NOT NULL,
  created_at  INTEGER NOT NULL,
  erase_at    INTEGER
) STRICT;

CREATE INDEX trips_by_payer ON trips (payer);
CREATE INDEX trips_by_erase ON trips (erase_at) WHERE erase_at IS NOT NULL;

CREATE TABLE revisions (
  trip        TEXT NOT NULL REFERENCES trips (id) ON DELETE CASCADE,
  number      INTEGER NOT NULL,
  at          INTEGER NOT NULL,
  by_role     TEXT NOT NULL,
  by_hiker    TEXT,
  what        TEXT NOT NULL,
  sealed      BLOB,
  document    INTEGER NOT NULL,
  kept_private TEXT NOT NULL,
  agreed      TEXT,
  PRIMARY KEY (trip, number)
) STRICT;

CREATE TABLE splits (
  trip        TEXT NOT NULL REFERENCES trips (id) ON DELETE CASCADE,
  id          TEXT NOT NULL,
  place       INTEGER NOT NULL,
  revision    INTEGER NOT NULL,
  at          INTEGER NOT NULL,
  by_role     TEXT NOT NULL,
  by_hiker    TEXT,
  sealed      BLOB NOT NULL,
  PRIMARY KEY (trip, id),
  UNIQUE (trip, place)
) STRICT;

CREATE TABLE links (
  id          TEXT PRIMARY KEY,
  trip        TEXT NOT NULL REFERENCES trips (id) ON DELETE CASCADE,
  hash        TEXT NOT NULL,
  role        TEXT NOT NULL,
  hiker       TEXT,
  created_at  INTEGER NOT NULL,
  expires_at  INTEGER,
  revoked_at  INTEGER
) STRICT;

CREATE INDEX links_by_trip ON links (trip, created_at, id);

CREATE TABLE replies (
  scope       TEXT NOT NULL,
  reply_key   TEXT NOT NULL,
  at          INTEGER NOT NULL,
  request     TEXT NOT NULL,
  status      INTEGER NOT NULL,
  location    TEXT NOT NULL,
  sealed      BLOB NOT NULL,
  PRIMARY KEY (scope, reply_key)
) STRICT;

CREATE INDEX replies_by_age ON replies (at);

CREATE TABLE jobs (
  id          TEXT PRIMARY KEY,
  trip        TEXT NOT NULL REFERENCES trips (id) ON DELETE CASCADE,
  revision    INTEGER NOT NULL,
  effort      INTEGER NOT NULL,
  by_role     TEXT NOT NULL,
  by_hiker    TEXT,
  asked_at    INTEGER NOT NULL,
  state       TEXT NOT NULL,
  attempt     INTEGER NOT NULL,
  stop_asked  INTEGER NOT NULL,
  instance    TEXT,
  lease_until INTEGER,
  progress    BLOB,
  outcome     BLOB
) STRICT;

CREATE INDEX jobs_open ON jobs (asked_at, id) WHERE state IN ('WAITING', 'RUNNING');
