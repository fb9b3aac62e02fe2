package pressweek.data.thread;

import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.thread.ThreadText.Word;

/**
 * Reads one thread from text: what is a size, what a pitch, what is said behind them. Numbers are
 * not looked up here, but for the sense of a whole number: {@code 10-32} is the size #10, and
 * {@code 1-8} is one inch.
 */
final class ThreadReader {
  /** No thread is written with more characters; longer text is not looked at. */
  private static final int LONGEST = 64;

  /** A whole number with this many threads an inch or more is a numbered size. */
  private static final double NUMBERED_TPI = 24;

  private final Scanner scan;
  private Word word = Word.NONE;
  private boolean leftHand;
  private boolean whole = true;
  private boolean rounded;

  /** True while the size is a whole number with nothing that says what of. */
  private boolean bare;

  private ThreadReader(Scanner scan) {
    this.scan = scan;
  }

  /** What a text says; empty when it does not begin as a thread does. */
  static Optional<ThreadText> read(String text) {
    String stripped = text.strip();
    if (stripped.isEmpty() || stripped.length() > LONGEST) {
      return Optional.empty();
    }
    return new ThreadReader(new Scanner(Spelling.plain(stripped))).read();
  }

  private Optional<ThreadText> read() {
    String first = scan.word();
    if (first.equals("M") || first.equals("MF")) {
      word = first.equals("MF") ? Word.FINE : Word.NONE;
      return metric();
    }
    if (!first.isEmpty() && says(TailWords.inch(first))) {
      scan.takeSpaces();
      first = scan.word();
    }
    if (first.equals("NO") || first.equals("NR")) {
      scan.take('.');
      return numbered();
    }
    if (!first.isEmpty()) {
      return Optional.empty();
    }
    return scan.take('#') ? numbered() : inches();
  }

  private Optional<ThreadText> metric() {
    scan.takeSpaces();
    OptionalDouble size = scan.decimal();
    if (size.isEmpty() || size.getAsDouble() == 0) {
      return Optional.empty();
    }
    return rest(false, size.getAsDouble(), millimetres());
  }

  /** The pitch behind a metric size; a number with a letter behind it is a tolerance class. */
  private OptionalDouble millimetres() {
    int mark = scan.mark();
    boolean space = scan.takeSpaces();
    boolean cross = scan.take('X');
    if (cross || scan.take('-') || space) {
      scan.takeSpaces();
      OptionalDouble pitch = scan.decimal();
      if (pitch.isPresent() && (cross || !Scanner.isLetter(scan.peek()))) {
        return pitch;
      }
    }
    scan.reset(mark);
    return OptionalDouble.empty();
  }

  /** A numbered size by ASME B1.1: 0.060 in and 0.013 in a number. */
  private Optional<ThreadText> numbered() {
    scan.takeSpaces();
    OptionalDouble number = scan.whole();
    if (number.isEmpty()) {
      return Optional.empty();
    }
    return rest(true, diameter(number.getAsDouble()), threadsPerInch());
  }

  private static double diameter(double number) {
    return 0.060 + 0.013 * number;
  }

  private Optional<ThreadText> inches() {
    OptionalDouble written = size();
    if (written.isEmpty()) {
      return Optional.empty();
    }
    bare &= !inchSign();
    OptionalDouble pitch = threadsPerInch();
    double size = written.getAsDouble();
    if (!bare) {
      return rest(true, size, pitch);
    }
    boolean isNumber = pitch.isPresent() && pitch.getAsDouble() >= NUMBERED_TPI;
    return pitch.isEmpty() ? Optional.empty() : rest(true, isNumber ? diameter(size) : size, pitch);
  }

  private OptionalDouble size() {
    int start = scan.mark();
    OptionalDouble number = scan.whole();
    char next = scan.peek();
    if (next == '.' || next == ',') {
      scan.reset(start);
      rounded = true;
      return scan.decimal();
    }
    if (next == '/' && number.isPresent()) {
      return fraction(number.getAsDouble());
    }
    bare = true;
    return number.isPresent() ? mixed(number.getAsDouble()) : number;
  }

  /** The number over what stands below the stroke; empty when that is no number or 0. */
  private OptionalDouble fraction(double over) {
    OptionalDouble under = scan.take('/') ? scan.whole() : OptionalDouble.empty();
    return under.isPresent() && under.getAsDouble() > 0
        ? OptionalDouble.of(over / under.getAsDouble())
        : OptionalDouble.empty();
  }

  /** The number and the fraction behind it, as in {@code 1 1/8} and {@code 1-1/8}. */
  private OptionalDouble mixed(double number) {
    int mark = scan.mark();
    if (scan.takeSpaces() || scan.take('-')) {
      OptionalDouble over = scan.whole();
      OptionalDouble part =
          over.isPresent() ? fraction(over.getAsDouble()) : OptionalDouble.empty();
      if (part.isPresent()) {
        bare = false;
        return OptionalDouble.of(number + part.getAsDouble());
      }
    }
    scan.reset(mark);
    return OptionalDouble.of(number);
  }

  private boolean inchSign() {
    int mark = scan.mark();
    scan.takeSpaces();
    if (scan.take('"')) {
      return true;
    }
    String unit = scan.word();
    if (unit.equals("IN") || unit.equals("INCH") || unit.equals("INCHES")) {
      scan.take('.');
      return true;
    }
    scan.reset(mark);
    return false;
  }

  private OptionalDouble threadsPerInch() {
    int mark = scan.mark();
    boolean space = scan.takeSpaces();
    boolean apart = scan.take('-') || !bare && (scan.take('X') || space);
    scan.takeSpaces();
    OptionalDouble number = apart ? scan.decimal() : OptionalDouble.empty();
    if (number.isEmpty() || isFitClass(number.getAsDouble())) {
      scan.reset(mark);
      return OptionalDouble.empty();
    }
    return number;
  }

  /** True when the number just taken is that of a class of fit, as in 2A. */
  private boolean isFitClass(double number) {
    return number <= 3 && (scan.peek() == 'A' || scan.peek() == 'B');
  }

  private Optional<ThreadText> rest(boolean inch, double size, OptionalDouble pitch) {
    if (pitch.isPresent() && pitch.getAsDouble() == 0 || size == 0) {
      return Optional.empty();
    }
    tail(inch, inch && pitch.isPresent());
    return Optional.of(new ThreadText(inch, size, rounded, pitch, word, leftHand, whole));
  }

  private void tail(boolean inch, boolean threadsPerInch) {
    while (!scan.atEnd()) {
      if (scan.takeSpaces() || scan.take('-')) {
        continue;
      }
      String token = scan.token();
      switch (token) {
        case "LH" -> leftHand = true;
        case "RH" -> {}
        case "TPI" -> whole &= threadsPerInch;
        default -> whole &= TailWords.isTolerance(token, inch) || seriesSaid(token, inch);
      }
    }
  }

  private boolean seriesSaid(String token, boolean inch) {
    int letters = 0;
    while (letters < token.length() && Scanner.isLetter(token.charAt(letters))) {
      letters++;
    }
    String name = token.substring(0, letters);
    String behind = token.substring(letters);
    return says(inch ? TailWords.inch(name) : TailWords.metric(name))
        && (behind.isEmpty() || TailWords.isTolerance(behind, inch));
  }

  /** Takes a word on the series; false when it is none or contradicts one before it. */
  private boolean says(Optional<Word> said) {
    if (said.isEmpty() || word != Word.NONE && said.get() != Word.NONE && said.get() != word) {
      return false;
    }
    word = said.get() == Word.NONE ? word : said.get();
    return true;
  }
}
