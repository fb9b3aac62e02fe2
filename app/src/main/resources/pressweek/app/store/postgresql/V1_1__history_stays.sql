-- What happened is never rewritten.

CREATE FUNCTION history_is_never_changed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'history is never changed';
END;
$$;

CREATE TRIGGER history_is_not_changed BEFORE UPDATE OR DELETE ON history
  FOR EACH ROW EXECUTE FUNCTION history_is_never_changed();

CREATE TRIGGER history_is_not_emptied BEFORE TRUNCATE ON history
  FOR EACH STATEMENT EXECUTE FUNCTION history_is_never_changed();
