package pressweek.data.files;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How well a heading and its cells fit a column, 0 to 100. */
final class HeadingMatch {
  private static final int SAME = 100;
  private static final int SYNONYM = 95;
  private static final int NEAR = 80;
  private static final int WITHIN = 70;
  private static final int METRIC_ASSUMED = 70;
  private static final int LOOK_ALONE = 45;
  private static final int WRONG_LOOK = 50;
  private static final int RIGHT_LOOK = 5;

  /** Below this a heading fits nothing. */
  static final int LEAST = 40;

  private final InputFile file;
  private final Times times;

  /**
   * A match.
   *
   * @param file file that the heading stands in
   * @param times how dates are written there
   */
  HeadingMatch(InputFile file, Times times) {
    this.file = file;
    this.times = times;
  }

  /**
   * One way to read a heading.
   *
   * @param name name that the heading would have, with its unit
   * @param confidence how well it fits, 0 to 100
   * @param because why, in words
   */
  record Fit(String name, int confidence, String because) {}

  /** How well a heading fits a column; empty when it does not. */
  Optional<Fit> fit(String heading, Column column, List<String> cells) {
    String normal = HeaderReader.normal(heading);
    if (normal.equals(column.name()) || column.unit().otherNames(column.name()).contains(normal)) {
      return Optional.of(new Fit(normal, SAME, "the same name"));
    }
    String plain = HeadingWords.plain(heading);
    HeadingUnit unit = HeadingUnit.of(plain);
    boolean measured = column.unit() != Unit.NONE;
    Optional<String> name = measured ? name(column, unit) : Optional.of(column.name());
    if (name.isEmpty()) {
      return Optional.empty();
    }
    Fit words = words(measured ? unit.words() : plain, column, name.get());
    boolean assumed = measured && unit.suffix().isEmpty() && words.confidence() > METRIC_ASSUMED;
    Fit sure =
        assumed
            ? new Fit(words.name(), METRIC_ASSUMED, words.because() + ", the unit is assumed")
            : words;
    Fit fit = look(sure, column, cells);
    return fit.confidence() < LEAST ? Optional.empty() : Optional.of(fit);
  }

  /** The name of the column with the unit of the heading; empty when it cannot have that unit. */
  private static Optional<String> name(Column column, HeadingUnit unit) {
    if (!unit.known()) {
      return Optional.empty();
    }
    String base = column.unit().base(column.name());
    String name = unit.suffix().map(s -> base + s).orElse(column.name());
    boolean may =
        name.equals(column.name()) || column.unit().otherNames(column.name()).contains(name);
    return may ? Optional.of(name) : Optional.empty();
  }

  private Fit words(String plain, Column column, String name) {
    Fit best = new Fit(name, 0, "");
    for (String word : HeadingWords.of(file, column)) {
      Fit fit = words(plain, word, name);
      best = fit.confidence() > best.confidence() ? fit : best;
    }
    return best;
  }

  private static Fit words(String plain, String word, String name) {
    String because = "like \"" + word + "\"";
    if (plain.equals(word) || plain.replace(" ", "").equals(word.replace(" ", ""))) {
      return new Fit(name, SYNONYM, "another word for it");
    }
    int longest = Math.max(plain.length(), word.length());
    double like = 1 - (double) Nearest.distance(plain, word) / longest;
    int near = like >= 0.75 && longest > 3 ? (int) (NEAR * like) : 0;
    Set<String> shared = new HashSet<>(Arrays.asList(plain.split(" ")));
    Set<String> wanted = new HashSet<>(Arrays.asList(word.split(" ")));
    int all = shared.size() + wanted.size();
    shared.retainAll(wanted);
    int within = word.length() > 2 ? 2 * WITHIN * shared.size() / all : 0;
    return new Fit(name, Math.max(near, within), because);
  }

  private Fit look(Fit fit, Column column, List<String> cells) {
    Optional<Boolean> looks = new CellLook(times).fits(column, cells);
    if (looks.isEmpty()) {
      return fit;
    }
    if (!looks.get()) {
      return new Fit(fit.name(), fit.confidence() - WRONG_LOOK, fit.because());
    }
    if (fit.confidence() == 0) {
      boolean telling = column.required() && CellLook.telling(column);
      return telling ? new Fit(fit.name(), LOOK_ALONE, "by its cells alone") : fit;
    }
    int more = CellLook.telling(column) ? RIGHT_LOOK : 0;
    return new Fit(fit.name(), Math.min(SYNONYM, fit.confidence() + more), fit.because());
  }
}
