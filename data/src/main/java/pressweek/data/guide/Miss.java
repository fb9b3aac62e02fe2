package pressweek.data.guide;

import java.util.List;

/**
 * Where a reading of a code broke off.
 *
 * @param reached how far the code could be read, characters; the furthest miss is the one worth
 *     telling
 * @param position character at which the unreadable text begins, from 0
 * @param seen the unreadable text; empty when the code, or the part, ends there
 * @param expected what would have been read there
 */
record Miss(int reached, int position, String seen, Expected expected) {

  /** What would have been read. */
  sealed interface Expected {}

  /** A symbol of a table. */
  record Symbol(String field, List<String> known) implements Expected {
    Symbol {
      known = List.copyOf(known);
    }
  }

  /** Anything else, in words: text as it stands, a number, a part, the end. */
  record Words(String text) implements Expected {}

  /** What a field would have read. */
  static Expected expected(Field field) {
    if (field instanceof Field.Table table) {
      return new Symbol(table.name(), List.copyOf(table.entries().keySet()));
    }
    if (field instanceof Field.Number number) {
      return new Words(number.name() + " " + number.words());
    }
    return new Words(field.name() + " " + ((Field.Special) field).marks());
  }
}
