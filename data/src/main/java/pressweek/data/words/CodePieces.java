package pressweek.data.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pressweek.data.guide.Decoded;
import pressweek.data.guide.Field;
import pressweek.data.guide.Form;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Origin;

/** Recognises item codes, and parts of them, as they are written in the guide. */
final class CodePieces {
  /** Shorter texts are no whole code of a guide without a separator. */
  private static final int SHORTEST_CODE = 5;

  private final Offer offer;
  private final String separator;
  private final List<Shape> shapes = new ArrayList<>();

  /** A form of a part as a pattern; a group for each of its fields. */
  private record Shape(Pattern pattern, List<Field> fields, Form form) {}

  CodePieces(Offer offer) {
    this.offer = offer;
    this.separator = offer.guide().sheet().separator();
    int flags = offer.guide().ignoreCase() ? Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE : 0;
    for (Form form : offer.forms()) {
      shape(form, flags).ifPresent(shapes::add);
    }
  }

  private static Optional<Shape> shape(Form form, int flags) {
    StringBuilder pattern = new StringBuilder();
    List<Field> fields = new ArrayList<>();
    for (Form.Piece piece : form.pieces()) {
      if (piece instanceof Form.Literal literal) {
        pattern.append(Pattern.quote(literal.text()));
      } else if (piece instanceof Form.Slot slot) {
        Optional<String> symbols = symbols(slot.field());
        if (symbols.isEmpty()) {
          return Optional.empty();
        }
        pattern.append('(').append(symbols.get()).append(')');
        fields.add(slot.field());
      }
    }
    return fields.isEmpty()
        ? Optional.empty()
        : Optional.of(new Shape(Pattern.compile(pattern.toString(), flags), fields, form));
  }

  /** A pattern for what can stand in a field; empty for fields that are filled up. */
  private static Optional<String> symbols(Field field) {
    if (field.frame().width() > 0) {
      return Optional.empty();
    }
    if (field instanceof Field.Table table) {
      return Optional.of(
          table.entries().keySet().stream()
              .sorted((a, b) -> b.length() - a.length())
              .map(Pattern::quote)
              .collect(Collectors.joining("|")));
    }
    return field instanceof Field.Number
        ? Optional.of("[0-9]{1,6}(?:\\.[0-9]{1,4})?")
        : Optional.empty();
  }

  /** What a whole item code says; empty for any other text. */
  Optional<Map<String, String>> whole(String text) {
    boolean likely =
        separator.isEmpty()
            ? text.length() >= SHORTEST_CODE && text.chars().anyMatch(Character::isDigit)
            : text.contains(separator) && allFit(text);
    if (!likely) {
      return Optional.empty();
    }
    Decoded decoded = offer.guide().decode(text);
    if (!decoded.good()) {
      return Optional.empty();
    }
    Map<String, String> says = new LinkedHashMap<>();
    for (Attribute attribute : decoded.attributes()) {
      if (attribute.origin() == Origin.CODE) {
        says.put(attribute.name(), attribute.value());
      }
    }
    return Optional.of(withoutSymbols(says));
  }

  /** Leaves out symbols which only repeat what their entries say. */
  private Map<String, String> withoutSymbols(Map<String, String> says) {
    for (Field.Table table : offer.tables()) {
      String symbol = says.getOrDefault(table.attribute(), "");
      boolean known = table.entries().containsKey(symbol);
      if (known && !Offer.essential(table, symbol).containsKey(table.attribute())) {
        says.remove(table.attribute());
      }
    }
    return says;
  }

  private boolean allFit(String text) {
    String[] parts = text.split(Pattern.quote(separator), -1);
    int strange = 0;
    for (String part : parts) {
      strange += part(part).isEmpty() ? 1 : 0;
    }
    return strange * 2 <= parts.length;
  }

  /** What a part of a code says; empty for any other text. */
  Optional<Map<String, String>> part(String text) {
    for (Shape shape : shapes) {
      Matcher matcher = shape.pattern().matcher(text);
      if (matcher.matches()) {
        return Optional.of(says(shape, matcher));
      }
    }
    return Optional.empty();
  }

  private static Map<String, String> says(Shape shape, Matcher matcher) {
    Map<String, String> says = new LinkedHashMap<>(shape.form().sets());
    for (int i = 0; i < shape.fields().size(); i++) {
      String text = matcher.group(i + 1);
      if (shape.fields().get(i) instanceof Field.Table table) {
        table.entries().keySet().stream()
            .filter(symbol -> symbol.equalsIgnoreCase(text))
            .findFirst()
            .ifPresent(symbol -> says.putAll(Offer.essential(table, symbol)));
      } else if (shape.fields().get(i) instanceof Field.Number number) {
        says.put(number.attribute(), value(number, text));
      }
    }
    return says;
  }

  private static String value(Field.Number number, String text) {
    BigDecimal written = new BigDecimal(text).movePointLeft(number.decimals());
    boolean inches = number.unit().equals("in") && Labels.unit(number.attribute()).equals("mm");
    return Measured.plain(inches ? written.multiply(Measured.MM_PER_INCH) : written);
  }
}
