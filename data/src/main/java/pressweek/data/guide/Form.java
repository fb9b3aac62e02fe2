package pressweek.data.guide;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One way to write a part of a code.
 *
 * @param text as in the guide, for example <code>{thread}-S{length}</code>
 * @param pieces what it consists of, in order
 * @param sets attributes that the form itself means
 * @param line line of the guide
 */
public record Form(String text, List<Piece> pieces, Map<String, String> sets, int line) {
  public Form {
    pieces = List.copyOf(pieces);
    sets = Collections.unmodifiableMap(new LinkedHashMap<>(sets));
  }

  /** Its fields, in order. */
  public List<Field> fields() {
    return pieces.stream()
        .filter(Slot.class::isInstance)
        .map(piece -> ((Slot) piece).field())
        .toList();
  }

  /** A piece of a form: text as it stands, or a field. */
  public sealed interface Piece {}

  /**
   * Text as it stands.
   *
   * @param text text
   * @param folded the text in the spelling in which codes are compared
   */
  public record Literal(String text, String folded) implements Piece {}

  /** A field. */
  public record Slot(Field field) implements Piece {}
}
