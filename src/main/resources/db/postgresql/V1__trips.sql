CREATE TABLE trips (
  id          TEXT PRIMARY KEY,
  head        BIGINT NOT NULL,
  payer       TEXT NOT NULL,
  created_at  BIGINT NOT NULL,
  erase_at    BIGINT
);

CREATE INDEX trips_by_payer ON trips (payer);
CREATE INDEX trips_by_erase ON trips (erase_at) WHERE erase_at IS NOT NULL;

CREATE TABLE revisions (
  trip        TEXT NOT NULL REFERENCES trips (id) ON DELETE CASCADE,
  number      BIGINT NOT NULL,
  at          BIGINT NOT NULL,
  by_role     TEXT NOT NULL,
  by_hiker    TEXT,
  what        TEXT NOT NULL,
  sealed      BYTEA,
  document    BIGINT NOT NULL,
  kept_private TEXT NOT NULL,
  agreed      TEXT,
  PRIMARY KEY (trip, number)
);

CREATE TABLE splits (
  trip        TEXT NOT NULL REFERENCES trips (id) ON DELETE CASCADE,
  id          TEXT NOT NULL,
  place       BIGINT NOT NULL,
  revision    BIGINT NOT NULL,
  at          BIGINT NOT NULL,
  by_role     TEXT NOT NULL,
  by_hiker    TEXT,
  sealed      BYTEA NOT NULL,
  PRIMARY KEY (trip, id),
  UNIQUE (trip, place)
);

CREATE TABLE links (
  id          TEXT PRIMARY KEY,
  trip        TEXT NOT NULL REFERENCES trips (id) ON DELETE CASCADE,
  hash        TEXT NOT NULL,
  role        TEXT NOT NULL,
  hiker       TEXT,
  created_at  BIGINT NOT NULL,
  expires_at  BIGINT,
  revoked_at  BIGINT
);

CREATE INDEX links_by_trip ON links (trip, created_at, id);

CREATE TABLE replies (
  scope       TEXT NOT NULL,
  reply_key   TEXT NOT NULL,
  at          BIGINT NOT NULL,
  request     TEXT NOT NULL,
  status      BIGINT NOT NULL,
  location    TEXT NOT NULL,
  sealed      BYTEA NOT NULL,
  PRIMARY KEY (scope, reply_key)
);

CREATE INDEX replies_by_age ON replies (at);

CREATE TABLE jobs (
  id          TEXT PRIMARY KEY,
  trip        TEXT NOT NULL REFERENCES trips (id) ON DELETE CASCADE,
  revision    BIGINT NOT NULL,
  effort      BIGINT NOT NULL,
  by_role     TEXT NOT NULL,
  by_hiker    TEXT,
  asked_at    BIGINT NOT NULL,
  state       TEXT NOT NULL,
  attempt     BIGINT NOT NULL,
  stop_asked  BIGINT NOT NULL,
  instance    TEXT,
  lease_until BIGINT,
  progress    BYTEA,
  outcome     BYTEA
);

CREATE INDEX jobs_open ON jobs (asked_at, id) WHERE state IN ('WAITING', 'RUNNING');
