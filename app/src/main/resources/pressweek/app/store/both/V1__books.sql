-- The books of a plant. The same tables on SQLite and PostgreSQL; times are milliseconds since 1970 UTC.

CREATE TABLE week_state (
  id ${id},
  parent BIGINT REFERENCES week_state (id),
  plan_number TEXT NOT NULL,
  body ${bytes} NOT NULL,
  what TEXT NOT NULL,
  why TEXT NOT NULL,
  made_by TEXT NOT NULL,
  made_at BIGINT NOT NULL
);
CREATE INDEX week_state_by_parent ON week_state (parent);

-- One row: which state lies on the desk, and the last step that brought it there.
CREATE TABLE desk (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  version BIGINT NOT NULL,
  state BIGINT REFERENCES week_state (id),
  what TEXT NOT NULL,
  made_by TEXT NOT NULL,
  made_at BIGINT NOT NULL
);
INSERT INTO desk (id, version, state, what, made_by, made_at) VALUES (1, 0, NULL, '', '', 0);

CREATE TABLE given_plan (
  id ${id},
  number TEXT NOT NULL UNIQUE,
  body ${bytes} NOT NULL,
  why TEXT NOT NULL,
  made_by TEXT NOT NULL,
  made_at BIGINT NOT NULL
);

CREATE TABLE tick (
  seq ${id},
  id TEXT NOT NULL UNIQUE,
  pull TEXT NOT NULL,
  plan_number TEXT NOT NULL,
  pieces INTEGER NOT NULL,
  short_pieces INTEGER NOT NULL,
  reason TEXT NOT NULL,
  undoes TEXT,
  made_by TEXT NOT NULL,
  at_client BIGINT NOT NULL,
  at_server BIGINT NOT NULL
);
CREATE INDEX tick_by_pull ON tick (pull, seq);
CREATE INDEX tick_by_undone ON tick (undoes);

CREATE TABLE floor_note (
  id ${id},
  kind TEXT NOT NULL,
  what TEXT NOT NULL,
  from_at BIGINT,
  until_at BIGINT,
  quantity INTEGER,
  note TEXT NOT NULL,
  made_by TEXT NOT NULL,
  made_at BIGINT NOT NULL,
  plan_number TEXT
);
CREATE INDEX floor_note_by_plan ON floor_note (plan_number);

CREATE TABLE scenario (
  name TEXT PRIMARY KEY,
  version BIGINT NOT NULL,
  body TEXT NOT NULL,
  why TEXT NOT NULL,
  made_by TEXT NOT NULL,
  made_at BIGINT NOT NULL
);

CREATE TABLE person (
  name TEXT PRIMARY KEY,
  role TEXT NOT NULL,
  password_hash TEXT NOT NULL,
  away SMALLINT NOT NULL
);

CREATE TABLE login (
  token_sha256 TEXT PRIMARY KEY,
  person TEXT NOT NULL,
  csrf TEXT NOT NULL,
  expires_at BIGINT NOT NULL
);
CREATE INDEX login_by_person ON login (person);

CREATE TABLE failed_login (
  id ${id},
  person TEXT NOT NULL,
  address TEXT NOT NULL,
  made_at BIGINT NOT NULL
);
CREATE INDEX failed_login_by_person ON failed_login (person, made_at);
CREATE INDEX failed_login_by_address ON failed_login (address, made_at);

CREATE TABLE history (
  id ${id},
  made_by TEXT NOT NULL,
  made_at BIGINT NOT NULL,
  what TEXT NOT NULL,
  why TEXT NOT NULL,
  about TEXT NOT NULL
);
CREATE INDEX history_by_about ON history (about, id);

CREATE TABLE file_mark (
  id ${id},
  file TEXT NOT NULL,
  sha256 TEXT NOT NULL,
  made_by TEXT NOT NULL,
  made_at BIGINT NOT NULL
);
CREATE INDEX file_mark_by_file ON file_mark (file, id);
