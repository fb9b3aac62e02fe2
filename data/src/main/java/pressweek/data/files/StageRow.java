package pressweek.data.files;

/**
 * A row of {@code stages.csv}: an item that is molded over a core.
 *
 * @param at where it stands
 * @param item head symbol or item code
 * @param core item code of the core
 * @param restMin minutes that the core rests before it is molded over
 */
public record StageRow(At at, String item, String core, int restMin) {}
