-- What happened is never rewritten. The third refuses INSERT OR REPLACE, which fires no DELETE trigger.

CREATE TRIGGER history_is_not_updated BEFORE UPDATE ON history
BEGIN
  SELECT RAISE(ABORT, 'history is never changed');
END;

CREATE TRIGGER history_is_not_deleted BEFORE DELETE ON history
BEGIN
  SELECT RAISE(ABORT, 'history is never changed');
END;

CREATE TRIGGER history_is_not_replaced BEFORE INSERT ON history
WHEN EXISTS (SELECT 1 FROM history WHERE id = NEW.id)
BEGIN
  SELECT RAISE(ABORT, 'history is never changed');
END;
