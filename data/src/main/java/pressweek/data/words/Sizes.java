package pressweek.data.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.guide.Field;
import pressweek.data.words.Measured.Unit;

/** Finds the length that a plant makes for one that a customer names. */
final class Sizes {
  private static final int NEAREST = 2;
  private static final BigDecimal HUNDRED = new BigDecimal(100);
  private static final BigDecimal EIGHT = new BigDecimal(8);

  /** Millimetres that are this near to an eighth of an inch have been converted from it. */
  private static final BigDecimal CONVERTED = new BigDecimal("0.051");

  private final Offer offer;
  private final BigDecimal nearestPct;
  private final Pairs pairs;
  private final Map<String, List<Row>> all = new HashMap<>();

  Sizes(Offer offer, Pairs pairs, BigDecimal nearestPct) {
    this.offer = offer;
    this.pairs = pairs;
    this.nearestPct = nearestPct;
    for (String attribute : offer.attributes()) {
      if (!Labels.unit(attribute).isEmpty()) {
        all.put(attribute, rows(attribute));
      }
    }
  }

  /**
   * A length that is made.
   *
   * @param value as the guide writes it
   * @param size the same as a number
   */
  private record Made(String value, BigDecimal size) {}

  /** A length with what the same symbol says. */
  private record Row(Made made, Map<String, String> says) {}

  /** A length as it may be meant: in the unit of the attribute, and whether only exactly. */
  private record Meant(BigDecimal size, boolean exact, String shown, boolean guessed) {}

  /**
   * What a named length comes to.
   *
   * @param value the plant's value; empty when none is near enough
   * @param assumption what was taken for granted; empty when nothing was
   * @param nearest the nearest values
   */
  record Fit(String value, String assumption, List<String> nearest) {
    Fit {
      nearest = List.copyOf(nearest);
    }

    boolean found() {
      return !value.isEmpty();
    }
  }

  /** True when some item has a length like this. */
  boolean isPossible(String attribute, Measured number) {
    return fit(attribute, number, listed(attribute, Map.of()), Map.of()).found();
  }

  /** The length of an item of which some is known. */
  Fit fit(String attribute, Measured number, Map<String, String> known) {
    Map<String, String> rest = new LinkedHashMap<>(known);
    rest.remove(attribute);
    return fit(attribute, number, listed(attribute, rest), rest);
  }

  private Fit fit(String attribute, Measured number, List<Made> listed, Map<String, String> known) {
    List<Meant> meant = meant(attribute, number);
    for (Meant one : meant) {
      List<Made> near =
          near(attribute, one.size(), listed).stream()
              .filter(made -> isNear(one, made.size()))
              .toList();
      Optional<Made> fits =
          near.stream()
              .filter(made -> pairs.admit(known, Map.of(attribute, made.value())))
              .findFirst()
              .or(() -> near.stream().findFirst());
      if (fits.isPresent()) {
        return new Fit(fits.get().value(), assumption(attribute, one, fits.get()), List.of());
      }
    }
    List<String> nearest =
        near(attribute, likeliest(attribute, meant, listed).size(), listed).stream()
            .limit(NEAREST)
            .sorted(Comparator.comparing(Made::size))
            .map(Made::value)
            .toList();
    return new Fit("", "", nearest);
  }

  /** What is meant that comes nearest to something made. */
  private Meant likeliest(String attribute, List<Meant> meant, List<Made> listed) {
    Comparator<Meant> byGap =
        Comparator.comparing(
            one ->
                near(attribute, one.size(), listed).stream()
                    .findFirst()
                    .map(made -> gap(one.size(), made.size()))
                    .orElse(BigDecimal.ZERO));
    return meant.stream().min(byGap).orElseThrow();
  }

  private static BigDecimal gap(BigDecimal size, BigDecimal made) {
    BigDecimal larger = size.max(made).max(new BigDecimal("0.001"));
    return made.subtract(size).abs().divide(larger, MathContext.DECIMAL32);
  }

  private boolean isNear(Meant meant, BigDecimal made) {
    BigDecimal off = made.subtract(meant.size()).abs();
    return off.signum() == 0
        || !meant.exact() && off.multiply(HUNDRED).compareTo(made.abs().multiply(nearestPct)) <= 0;
  }

  private static String assumption(String attribute, Meant meant, Made made) {
    boolean same = meant.size().compareTo(made.size()) == 0;
    return same && !meant.guessed()
        ? ""
        : meant.shown() + " is taken as " + Labels.value(attribute, made.value());
  }

  private static List<Meant> meant(String attribute, Measured number) {
    boolean mm = !Labels.unit(attribute).equals("in");
    List<Meant> meant = new ArrayList<>();
    boolean inches = number.unit() == Unit.INCH || number.unit() == Unit.IN;
    if (inches) {
      meant.add(inches(mm, number, number.text() + " in", false));
    }
    if (number.unit() == Unit.MM) {
      meant.add(millimetres(mm, number, number.text() + " mm", false));
    }
    if (number.unit() == Unit.IN) {
      meant.add(millimetres(mm, number, number.text(), true));
    }
    if (number.isBare()) {
      Meant metric = millimetres(mm, number, number.text(), true);
      Meant inch = inches(mm, number, number.text() + ", as inches", true);
      meant.add(mm ? metric : inch);
      meant.add(mm ? inch : metric);
    }
    return meant;
  }

  private static Meant inches(boolean mm, Measured number, String shown, boolean guessed) {
    if (!mm) {
      return new Meant(number.value(), false, shown, guessed);
    }
    BigDecimal size = number.value().multiply(Measured.MM_PER_INCH);
    String rounded = Measured.plain(size.setScale(2, RoundingMode.HALF_UP));
    return new Meant(size, false, shown + " = " + rounded + " mm", guessed);
  }

  private static Meant millimetres(boolean mm, Measured number, String shown, boolean guessed) {
    BigDecimal eighths =
        number.value().divide(Measured.MM_PER_INCH, MathContext.DECIMAL64).multiply(EIGHT);
    BigDecimal whole = eighths.setScale(0, RoundingMode.HALF_UP);
    BigDecimal off =
        whole
            .multiply(Measured.MM_PER_INCH)
            .divide(EIGHT, MathContext.DECIMAL64)
            .subtract(number.value())
            .abs();
    boolean converted = !number.isWhole() && off.compareTo(CONVERTED) <= 0;
    if (mm) {
      return new Meant(number.value(), !converted, shown, guessed);
    }
    BigDecimal inch = number.value().divide(Measured.MM_PER_INCH, MathContext.DECIMAL64);
    return new Meant(inch, false, shown, guessed);
  }

  private List<Row> rows(String attribute) {
    List<Row> rows = new ArrayList<>();
    for (Field.Table table : offer.tables()) {
      for (Field.Entry entry : table.entries().values()) {
        String value = entry.sets().getOrDefault(attribute, "");
        number(value).ifPresent(size -> rows.add(new Row(new Made(value, size), entry.sets())));
      }
    }
    return rows;
  }

  /** The lengths in tables that go with what is known, each once. */
  private List<Made> listed(String attribute, Map<String, String> known) {
    List<Made> listed = new ArrayList<>();
    for (Row row : all.getOrDefault(attribute, List.of())) {
      if (Offer.agree(row.says(), attribute, known) && !listed.contains(row.made())) {
        listed.add(row.made());
      }
    }
    return listed;
  }

  private static Optional<BigDecimal> number(String text) {
    return text.matches("[0-9]{1,6}(\\.[0-9]{1,6})?")
        ? Optional.of(new BigDecimal(text))
        : Optional.empty();
  }

  private List<Made> near(String attribute, BigDecimal size, List<Made> listed) {
    List<Made> near = new ArrayList<>(listed);
    for (Field.Number field : offer.numbers()) {
      if (field.attribute().equals(attribute)) {
        steps(field, size).forEach(step -> near.add(new Made(Measured.plain(step), step)));
      }
    }
    near.sort(Comparator.comparing(made -> made.size().subtract(size).abs()));
    return near;
  }

  /** The steps of a number on both sides of a size, within its range. */
  private static List<BigDecimal> steps(Field.Number field, BigDecimal size) {
    boolean inches = field.unit().equals("in") && Labels.unit(field.attribute()).equals("mm");
    BigDecimal scale = inches ? Measured.MM_PER_INCH : BigDecimal.ONE;
    BigDecimal written = size.divide(scale, MathContext.DECIMAL64);
    BigDecimal start = field.range().min().orElse(BigDecimal.ZERO);
    Optional<BigDecimal> step = field.range().step();
    List<BigDecimal> steps = new ArrayList<>();
    if (step.isEmpty()) {
      steps.add(clamp(field.range(), written));
    } else {
      BigDecimal below =
          written
              .subtract(start)
              .divide(step.get(), 0, RoundingMode.FLOOR)
              .multiply(step.get())
              .add(start);
      steps.add(clampStep(field.range(), below));
      steps.add(clampStep(field.range(), below.add(step.get())));
    }
    return steps.stream().distinct().map(one -> one.multiply(scale)).toList();
  }

  private static BigDecimal clamp(Field.Range range, BigDecimal number) {
    BigDecimal low = range.min().map(number::max).orElse(number);
    return range.max().map(low::min).orElse(low);
  }

  /** Within the range and on a step of it. */
  private static BigDecimal clampStep(Field.Range range, BigDecimal number) {
    BigDecimal start = range.min().orElse(BigDecimal.ZERO);
    BigDecimal low = number.max(start);
    if (range.max().isEmpty() || low.compareTo(range.max().get()) <= 0) {
      return low;
    }
    BigDecimal step = range.step().orElse(BigDecimal.ONE);
    return range
        .max()
        .get()
        .subtract(start)
        .divide(step, 0, RoundingMode.FLOOR)
        .multiply(step)
        .add(start);
  }
}
