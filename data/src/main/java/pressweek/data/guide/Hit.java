package pressweek.data.guide;

import java.util.Map;

/**
 * A field as it was read.
 *
 * @param field the field
 * @param start its first character
 * @param end character after it
 * @param symbol what it was read as, without what fills it; empty where fill alone stands
 * @param sets values by attribute; an empty value is: does not apply
 * @param words what the symbol means, for people; may be empty
 */
record Hit(
    Field field, int start, int end, String symbol, Map<String, String> sets, String words) {}
