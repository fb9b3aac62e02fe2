package pressweek.data.problem;

/**
 * One attribute of an item and where it came from.
 *
 * @param name attribute name as in the guide, for example {@code resin}
 * @param value its value, for example {@code PP}
 * @param origin where it came from
 * @param because the reason in words, for example {@code part 3 "PP-SGR"}
 */
public record Attribute(String name, String value, Origin origin, String because) {}
