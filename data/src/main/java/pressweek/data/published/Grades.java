package pressweek.data.published;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Strength grades of steel and stainless bolts, screws and studs, and what stainless steels are
 * called; see {@link Grade} for what they do not hold for.
 */
public final class Grades {
  private static final List<Grade> ALL =
      PrintedTable.rows(Grades.class, "strength.csv").stream().map(Grades::grade).toList();

  private static final List<EverydayName> NAMES =
      PrintedTable.rows(Grades.class, "stainless.csv").stream()
          .map(row -> new EverydayName(row.get(0), row.get(1), row.get(2)))
          .toList();

  private static final Set<String> GROUPS =
      Stream.concat(
              NAMES.stream().map(EverydayName::group),
              ALL.stream()
                  .filter(g -> g.standard().equals("ISO 3506-1"))
                  .map(g -> g.name().substring(0, g.name().indexOf('-'))))
          .collect(Collectors.toUnmodifiableSet());

  /** No material is named at more length; what is longer is not looked at. */
  private static final int LONGEST = 200;

  private Grades() {}

  private static Grade grade(List<String> row) {
    boolean inch = row.get(4).equals("ksi");
    double length = inch ? 25.4 : 1;
    double stress = inch ? Grade.KSI_MPA : 1;
    return new Grade(
        row.get(0),
        row.get(1),
        times(length, row.get(2)),
        times(length, row.get(3)),
        times(stress, row.get(5)),
        Double.parseDouble(row.get(6)) * stress,
        Double.parseDouble(row.get(7)) * stress);
  }

  private static OptionalDouble times(double unit, String number) {
    return number.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(number) * unit);
  }

  /** All grades, by standard, smaller sizes before larger ones. */
  public static List<Grade> all() {
    return ALL;
  }

  /** The everyday names of stainless steels. */
  public static List<EverydayName> everydayNames() {
    return NAMES;
  }

  /**
   * A grade at a size; where one row ends and the next begins, the smaller sizes' row. Empty when
   * the standard does not give the grade at that size.
   *
   * @param standard standard: {@code SAE J429}
   * @param name name in the standard: {@code 5}
   * @param diameterMm nominal diameter, mm
   */
  public static Optional<Grade> find(String standard, String name, double diameterMm) {
    return ALL.stream()
        .filter(g -> g.standard().equalsIgnoreCase(standard) && g.name().equalsIgnoreCase(name))
        .filter(g -> g.covers(diameterMm))
        .findFirst();
  }

  /**
   * The steel group of ISO 3506-1 that a material's words name, in whatever words stand beside it:
   * {@code A4} for {@code A4-70}, {@code 316}, {@code SS 316}; empty when they name none, or two.
   */
  public static Optional<String> stainlessGroup(String material) {
    if (material.length() > LONGEST) {
      return Optional.empty();
    }
    List<String> groups =
        Stream.of(material.toUpperCase(Locale.ROOT).split("[\\s,;/()]+"))
            .flatMap(word -> group(word).stream())
            .distinct()
            .toList();
    return groups.size() == 1 ? Optional.of(groups.get(0)) : Optional.empty();
  }

  private static Optional<String> group(String word) {
    int dash = word.indexOf('-');
    String first = dash < 0 ? word : word.substring(0, dash);
    return GROUPS.contains(first)
        ? Optional.of(first)
        : NAMES.stream().filter(n -> n.name().equals(word)).map(EverydayName::group).findFirst();
  }
}
