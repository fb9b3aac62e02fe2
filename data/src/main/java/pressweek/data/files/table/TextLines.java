package pressweek.data.files.table;

import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** The lines of a text, numbered; lines that were read ahead can be put back. */
final class TextLines implements Closeable {
  /** The longest line that is kept; what is beyond is dropped and the line marked as torn. */
  static final int LONGEST = 1 << 20;

  /**
   * One line.
   *
   * @param number from 1
   * @param text without its end
   * @param torn true when it was too long
   */
  record TextLine(int number, String text, boolean torn) {}

  private final Reader in;
  private final Deque<TextLine> back = new ArrayDeque<>();
  private int number;
  private boolean afterReturn;
  private boolean ended;

  /**
   * Lines of a text.
   *
   * @param in text; must be buffered
   */
  TextLines(Reader in) {
    this.in = in;
  }

  /** The next line; empty at the end. */
  Optional<TextLine> next() throws IOException {
    TextLine line = back.poll();
    return line != null ? Optional.of(line) : fresh();
  }

  /** Puts lines back, so that they come next, the first first. */
  void putBack(List<TextLine> lines) {
    for (int i = lines.size() - 1; i >= 0; i--) {
      back.push(lines.get(i));
    }
  }

  private Optional<TextLine> fresh() throws IOException {
    if (ended) {
      return Optional.empty();
    }
    StringBuilder text = new StringBuilder();
    boolean torn = false;
    int c = read();
    while (c >= 0 && c != '\n') {
      if (text.length() < LONGEST) {
        text.append((char) c);
      } else {
        torn = true;
      }
      c = read();
    }
    ended = c < 0;
    if (ended && text.isEmpty()) {
      return Optional.empty();
    }
    number++;
    return Optional.of(new TextLine(number, text.toString(), torn));
  }

  /** The next character, with every kind of line end as one line feed. */
  private int read() throws IOException {
    int c = in.read();
    if (afterReturn && c == '\n') {
      c = in.read();
    }
    afterReturn = c == '\r';
    return afterReturn ? '\n' : c;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
