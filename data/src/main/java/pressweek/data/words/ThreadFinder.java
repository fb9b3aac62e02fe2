package pressweek.data.words;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.thread.Series;
import pressweek.data.thread.Thread;

/**
 * Finds threads in a text: by ISO 261 ({@code M8}, {@code M8x1.25}, {@code M8 x 30}, where 30 is a
 * length) and by ASME B1.1 ({@code 1/4-20}, {@code .250-20}, {@code #10-32}, {@code 5/16 x 18}).
 */
final class ThreadFinder {
  private static final Set<String> COARSE = Set.of("unc", "nc", "unrc", "coarse");
  private static final Set<String> FINE = Set.of("unf", "nf", "unrf", "fine");
  private static final Set<String> SERIES = Set.of("un", "unr", "tpi", "unef", "uns");
  private static final int LEAST_TPI = 4;
  private static final int MOST_TPI = 80;

  private final StandardThreads standard = new StandardThreads();
  private final PlantThreads plant;

  ThreadFinder(PlantThreads plant) {
    this.plant = plant;
  }

  /**
   * A thread with where it ends.
   *
   * @param cut the thread
   * @param to the token after it
   */
  record Found(Cut cut, int to) {}

  /** A size in inches, as it was written, and where it ends. */
  private record Size(double inch, String text, int to) {}

  /** The thread that begins at a token; empty when none does. */
  Optional<Found> at(Tokens tokens, int from) {
    Token first = tokens.at(from);
    if (first.isWord() && (first.is("m") || first.is("mf"))) {
      return metric(tokens, from).map(found -> hand(tokens, found));
    }
    boolean number = first.is("#") || first.isWord() && (first.is("no") || first.is("nr"));
    Optional<Found> found = number ? numbered(tokens, from) : inch(tokens, from);
    return found.map(cut -> hand(tokens, cut));
  }

  private Optional<Found> metric(Tokens tokens, int from) {
    Token size = tokens.at(from + 1);
    boolean spaced = size.gap() && !tokens.original(from, from + 1).equals("M");
    if (!size.isReadable() || size.isFraction() || spaced) {
      return Optional.empty();
    }
    double mm = size.value().doubleValue();
    String name = "M" + Measured.plain(size.value());
    int behind = from + 2;
    if (tokens.isTimes(behind) || tokens.at(behind).is("-")) {
      Optional<NumberReader.Found> next = pitch(tokens, behind + 1);
      if (next.isPresent()) {
        BigDecimal pitch = next.get().number().value();
        Optional<Thread> thread = standard.metric(mm, pitch.doubleValue());
        int to = tolerance(tokens, next.get().to());
        if (thread.isPresent()) {
          return Optional.of(new Found(plant.named(thread.get()), to));
        }
        if (pitch.scale() > 0 && pitch.doubleValue() * 4 < mm) {
          return Optional.of(new Found(plant.notMade(name + "x" + Measured.plain(pitch), mm), to));
        }
      }
    }
    boolean fine = tokens.at(from).is("mf") || FINE.contains(tokens.at(behind).text());
    Cut cut =
        fine
            ? plant.notMade(name + " fine", mm)
            : standard.coarse(mm).map(plant::named).orElseGet(() -> plant.notMade(name, mm));
    return Optional.of(new Found(cut, tolerance(tokens, behind)));
  }

  /** A number that a pitch can be: without a unit of its own but mm. */
  private static Optional<NumberReader.Found> pitch(Tokens tokens, int from) {
    Token whole = tokens.at(from);
    Token part = tokens.at(from + 2);
    boolean comma =
        whole.isWhole() && tokens.at(from + 1).is(",") && part.isWhole() && tokens.joined(from + 2);
    if (comma) {
      BigDecimal value = new BigDecimal(whole.text() + "." + part.text());
      Measured number = new Measured(value, Measured.Unit.NONE, value.toString(), true);
      return Optional.of(new NumberReader.Found(number, from + 3));
    }
    return NumberReader.at(tokens, from).filter(found -> !found.number().isInch());
  }

  /** Past a tolerance or class of fit, as in {@code M8-6g}, {@code 1/4-20 UNC-2A}. */
  private static int tolerance(Tokens tokens, int at) {
    int from = tokens.at(at).is("-") ? at + 1 : at;
    Token grade = tokens.at(from);
    Token position = tokens.at(from + 1);
    boolean is =
        grade.isWhole()
            && grade.text().length() == 1
            && position.isWord()
            && tokens.joined(from + 1)
            && Set.of("a", "b", "g", "h", "e", "f").contains(position.text());
    return is ? from + 2 : at;
  }

  private Optional<Found> numbered(Tokens tokens, int from) {
    int at = tokens.at(from + 1).is(".") ? from + 2 : from + 1;
    Token number = tokens.at(at);
    if (!number.isWhole() || number.value().intValue() > 12) {
      return Optional.empty();
    }
    String name = "#" + number.value().intValue();
    Size size = new Size(StandardThreads.numbered(number.value().intValue()), name, at + 1);
    Optional<Found> found = withPitch(tokens, size, false);
    if (found.isPresent()) {
      return found;
    }
    Cut cut = plant.ofSize(name, size.inch() * Measured.MM_PER_INCH.doubleValue());
    return cut.made() || tokens.at(from).is("#")
        ? Optional.of(new Found(cut, size.to()))
        : Optional.empty();
  }

  private Optional<Found> inch(Tokens tokens, int from) {
    Token first = tokens.at(from);
    if (first.isWhole() && tokens.at(from + 1).is("-") && first.value().intValue() <= 12) {
      int number = first.value().intValue();
      Size size = new Size(StandardThreads.numbered(number), "#" + number, from + 1);
      Optional<Found> found = withPitch(tokens, size, true);
      if (found.isPresent()) {
        return found;
      }
    }
    Optional<NumberReader.Found> size = NumberReader.at(tokens, from);
    boolean inches =
        size.isPresent()
            && (size.get().number().isInch()
                || first.text().indexOf('.') >= 0
                    && size.get().number().isBare()
                    && first.value().doubleValue() <= 1);
    if (!inches) {
      return Optional.empty();
    }
    Measured number = size.get().number();
    int to = size.get().to();
    return withPitch(tokens, new Size(number.value().doubleValue(), number.text(), to), false);
  }

  /**
   * A size with threads an inch or a series behind it. What is not in the standards is a thread
   * only behind a dash, and only when {@code listed} does not ask for one in the standards.
   */
  private Optional<Found> withPitch(Tokens tokens, Size size, boolean listed) {
    int at = size.to();
    boolean dash = tokens.at(at).is("-");
    boolean apart = dash || tokens.isTimes(at) || tokens.at(at).is(",");
    Token count = tokens.at(apart ? at + 1 : at);
    int behind = apart ? at + 2 : at + 1;
    if (count.isWhole() && count.text().length() <= 2 && !hasUnit(tokens, behind)) {
      int tpi = count.value().intValue();
      Optional<Thread> thread = standard.inch(size.inch(), tpi);
      boolean said = thread.isPresent() && (!tokens.at(at).is(",") || isSeries(tokens, behind));
      if (said) {
        return Optional.of(new Found(plant.named(thread.get()), series(tokens, behind)));
      }
      boolean other = dash && !listed && tpi >= LEAST_TPI && tpi <= MOST_TPI;
      if (other) {
        String name = size.text() + "-" + tpi;
        double mm = size.inch() * Measured.MM_PER_INCH.doubleValue();
        return Optional.of(new Found(plant.notMade(name, mm), series(tokens, behind)));
      }
    }
    return bySeries(tokens, size);
  }

  private Optional<Found> bySeries(Tokens tokens, Size size) {
    int at = tokens.at(size.to()).is("-") ? size.to() + 1 : size.to();
    Token word = tokens.at(at);
    if (!word.isWord() || !(COARSE.contains(word.text()) || FINE.contains(word.text()))) {
      return Optional.empty();
    }
    Series series = COARSE.contains(word.text()) ? Series.UNC : Series.UNF;
    return standard
        .inch(size.inch(), series)
        .map(thread -> new Found(plant.named(thread), series(tokens, at)));
  }

  /** True when a unit follows, so that the number before it counts no threads. */
  private static boolean hasUnit(Tokens tokens, int at) {
    Token next = tokens.at(at);
    boolean fraction = next.is("/") && tokens.joined(at) || next.isNumber() && next.isFraction();
    boolean decimal = next.is(".") && tokens.at(at + 1).isNumber() && tokens.joined(at + 1);
    return fraction
        || decimal
        || next.is("\"")
        || next.is("%")
        || next.isWord() && List.of("mm", "cm", "in", "inch", "inches").contains(next.text());
  }

  private static boolean isSeries(Tokens tokens, int at) {
    Token word = tokens.at(at);
    return word.isWord()
        && (COARSE.contains(word.text())
            || FINE.contains(word.text())
            || SERIES.contains(word.text()));
  }

  /** Past the words for the series and the class of fit. */
  private static int series(Tokens tokens, int at) {
    int to = at;
    int word = tokens.at(to).is("-") ? to + 1 : to;
    while (isSeries(tokens, word)) {
      to = word + 1;
      word = tokens.at(to).is("-") ? to + 1 : to;
    }
    return tolerance(tokens, to);
  }

  /** A left-hand thread is none of the plant's. */
  private Found hand(Tokens tokens, Found found) {
    int at = tokens.at(found.to()).is("-") ? found.to() + 1 : found.to();
    boolean left = tokens.at(at).is("left") && tokens.at(at + 1).is("hand");
    if (left || tokens.at(at).is("lh")) {
      Cut cut = found.cut();
      List<String> nearest = cut.settled() ? List.of(cut.name()) : cut.choices();
      return new Found(
          new Cut(cut.name() + " left hand", java.util.Map.of(), nearest, false, ""),
          left ? at + 2 : at + 1);
    }
    return found;
  }
}
