package pressweek.app.store.row;

/**
 * A line of the history.
 *
 * @param id its number; a later line has a higher one
 * @param what what was changed, in words
 * @param about key of what it is about: "week", "plan 2026-W49/3", "pull ..."
 * @param change who changed it, when and why
 */
public record Entry(long id, String what, String about, Change change) {}
