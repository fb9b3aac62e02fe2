-- Many plans at once: the problems to plan, what came of them, and the table of db-scheduler, whose names are its own.

CREATE TABLE sweep_problem (
  sha256 TEXT PRIMARY KEY,
  body ${bytes} NOT NULL,
  made_at BIGINT NOT NULL
);

-- One row a task, by the SHA-256 of all that its result depends on; fault is empty where it was done.
CREATE TABLE sweep_result (
  task TEXT PRIMARY KEY,
  body TEXT NOT NULL,
  fault TEXT NOT NULL,
  took_ms BIGINT NOT NULL,
  made_by TEXT NOT NULL,
  made_at BIGINT NOT NULL
);

CREATE TABLE sweep_queue (
  task_name TEXT NOT NULL,
  task_instance TEXT NOT NULL,
  task_data ${bytes},
  execution_time ${instant},
  picked BOOLEAN NOT NULL,
  picked_by TEXT,
  last_success ${instant},
  last_failure ${instant},
  consecutive_failures INTEGER,
  last_heartbeat ${instant},
  version BIGINT NOT NULL,
  priority SMALLINT,
  state TEXT,
  PRIMARY KEY (task_name, task_instance)
);
CREATE INDEX sweep_queue_by_time ON sweep_queue (execution_time);
CREATE INDEX sweep_queue_by_heartbeat ON sweep_queue (last_heartbeat);
