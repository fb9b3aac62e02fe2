package pressweek.data.files.table;

import java.util.ArrayList;
import java.util.List;

/** One row of a CSV file while its lines come in. */
final class CsvRow {
  private enum State {
    START,
    PLAIN,
    QUOTED,
    QUOTE_IN_QUOTED,
    AFTER,
    TORN
  }

  private final char separator;
  private final List<String> cells = new ArrayList<>();
  private final StringBuilder cell = new StringBuilder();
  private State state = State.START;
  private int length;

  CsvRow(char separator) {
    this.separator = separator;
  }

  /** Takes a line; more are needed while the row is {@link #open()}. */
  void take(String line) {
    if (state == State.QUOTED) {
      cell.append('\n');
    }
    for (int i = 0; i < line.length() && state != State.TORN; i++) {
      take(line.charAt(i));
    }
    length += line.length();
    if (state != State.QUOTED && state != State.TORN) {
      endCell();
    }
  }

  private void take(char c) {
    switch (state) {
      case START -> start(c);
      case PLAIN -> plain(c);
      case QUOTED -> quoted(c);
      case QUOTE_IN_QUOTED -> afterQuote(c);
      case AFTER -> after(c);
      case TORN -> {}
    }
  }

  private void start(char c) {
    if (c == '"') {
      cell.setLength(0);
      state = State.QUOTED;
    } else if (c == separator) {
      endCell();
    } else {
      cell.append(c);
      state = Blank.is(c) ? State.START : State.PLAIN;
    }
  }

  private void plain(char c) {
    if (c == separator) {
      endCell();
    } else {
      cell.append(c);
    }
  }

  private void quoted(char c) {
    if (c == '"') {
      state = State.QUOTE_IN_QUOTED;
    } else {
      cell.append(c);
    }
  }

  private void afterQuote(char c) {
    if (c == '"') {
      cell.append('"');
      state = State.QUOTED;
    } else {
      state = State.AFTER;
      after(c);
    }
  }

  private void after(char c) {
    if (c == separator) {
      endCell();
    } else if (!Blank.is(c)) {
      state = State.TORN;
    }
  }

  private void endCell() {
    cells.add(Blank.strip(cell.toString()));
    cell.setLength(0);
    state = State.START;
  }

  /** True while a quote is open. */
  boolean open() {
    return state == State.QUOTED;
  }

  /** True when text follows a closing quote. */
  boolean torn() {
    return state == State.TORN;
  }

  /** Number of the cell that is being read, from 1. */
  int cell() {
    return cells.size() + 1;
  }

  /** Characters taken so far. */
  int length() {
    return length;
  }

  List<String> cells() {
    return cells;
  }
}
