-- SHA-256 of each body, so that a byte that changed on the disk is noticed; empty for older rows.

ALTER TABLE week_state ADD COLUMN seal TEXT NOT NULL DEFAULT '';
ALTER TABLE given_plan ADD COLUMN seal TEXT NOT NULL DEFAULT '';
