package pressweek.examples.guides;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import pressweek.data.guide.Family;
import pressweek.data.guide.Field;
import pressweek.data.guide.Fill;
import pressweek.data.guide.Form;
import pressweek.data.guide.Guide;
import pressweek.data.guide.Marks;
import pressweek.data.guide.Part;

/**
 * Draws codes that are written as a guide allows, with every form, symbol, fill character, order
 * and number of repeats; the guide's rules may forbid them all the same. It is written from the
 * page about guide files and shares nothing with what reads and writes codes.
 */
final class CodeDraw {
  private static final BigDecimal FAR = new BigDecimal("99");

  private final Guide guide;
  private final Random random;

  CodeDraw(Guide guide, long seed) {
    this.guide = guide;
    this.random = new Random(seed);
  }

  /** The next code. */
  String next() {
    Family family = of(guide.families());
    List<String> texts = new ArrayList<>();
    List<List<String>> open = new ArrayList<>();
    for (Part part : family.parts()) {
      if (!part.anyOrder()) {
        close(open, texts);
      }
      List<String> written = part(part);
      if (part.anyOrder()) {
        open.add(written);
      } else {
        texts.addAll(written);
      }
    }
    close(open, texts);
    String code = String.join(guide.sheet().separator(), texts);
    return guide.ignoreCase() && random.nextInt(4) == 0 ? spoilCase(code) : code;
  }

  /** Writes neighbours of any order in some order. */
  private void close(List<List<String>> open, List<String> texts) {
    if (random.nextBoolean()) {
      Collections.shuffle(open, random);
    }
    open.forEach(texts::addAll);
    open.clear();
  }

  private List<String> part(Part part) {
    if (part.optional() && random.nextBoolean()) {
      return List.of();
    }
    int times = random.nextInt(3) == 0 ? 1 + random.nextInt(part.repeat()) : 1;
    List<String> written = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      written.add(form(of(part.forms())));
    }
    return written;
  }

  private String form(Form form) {
    StringBuilder text = new StringBuilder();
    for (Form.Piece piece : form.pieces()) {
      if (piece instanceof Form.Literal literal) {
        text.append(literal.text());
      } else if (piece instanceof Form.Slot slot) {
        text.append(field(slot.field()));
      }
    }
    return text.toString();
  }

  private String field(Field field) {
    Fill fill = field.frame().fill();
    int width = Math.max(1, field.frame().width());
    if (!fill.none().isEmpty() && random.nextInt(3) == 0) {
      return fill.none().repeat(width);
    }
    if (!fill.standard().isEmpty() && random.nextInt(3) == 0) {
      return fill.standard().repeat(width);
    }
    if (field instanceof Field.Table table) {
      return filled(field, of(new ArrayList<>(table.entries().keySet())));
    }
    if (field instanceof Field.Number number) {
      return filled(field, number(number));
    }
    return filled(field, mark(((Field.Special) field).marks()));
  }

  private static String filled(Field field, String text) {
    Fill fill = field.frame().fill();
    int lacking = field.frame().width() - text.length();
    if (lacking <= 0) {
      return text;
    }
    String more = fill.shorter().repeat(lacking);
    return fill.left() ? more + text : text + more;
  }

  /** A number of the range; where it has no steps, one with as many decimals as can be written. */
  private String number(Field.Number field) {
    BigDecimal finest = BigDecimal.ONE.movePointLeft(field.decimals());
    BigDecimal step = field.range().step().orElse(finest);
    BigDecimal min = field.range().min().orElse(BigDecimal.ZERO);
    BigDecimal max = field.range().max().orElse(FAR);
    int steps = max.subtract(min).divide(step, 0, RoundingMode.FLOOR).intValueExact();
    BigDecimal value = min.add(step.multiply(BigDecimal.valueOf(random.nextInt(steps + 1))));
    return value.movePointRight(field.decimals()).stripTrailingZeros().toPlainString();
  }

  private String mark(Marks marks) {
    boolean digits = Character.isDigit(marks.from().charAt(0));
    String alphabet = digits ? "0123456789" : "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    while (true) {
      StringBuilder mark = new StringBuilder();
      for (int i = 0; i < marks.from().length(); i++) {
        mark.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      String text = mark.toString();
      boolean inside = text.compareTo(marks.from()) >= 0 && text.compareTo(marks.to()) <= 0;
      if (inside && text.chars().allMatch(c -> marks.skip().indexOf(c) < 0)) {
        return text;
      }
    }
  }

  private String spoilCase(String code) {
    StringBuilder text = new StringBuilder();
    for (char c : code.toCharArray()) {
      text.append(random.nextBoolean() ? Character.toLowerCase(c) : c);
    }
    return text.toString();
  }

  private <T> T of(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
