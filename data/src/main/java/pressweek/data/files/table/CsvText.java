package pressweek.data.files.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The text of a CSV file in which cells are exchanged and rows added. All else stays as it is, to
 * the character: order, separators, quotes, white space, line ends. For files whose rows {@link
 * CsvTable} reads without a fault. Not for use by several threads.
 */
public final class CsvText {
  private final StringBuilder text;
  private final char separator;
  private final TreeMap<Integer, List<Span>> rows = new TreeMap<>();
  private int at;
  private int line = 1;

  /** From a character to the one after the last, without white space round the cell. */
  private record Span(int from, int to) {}

  private CsvText(String text) {
    this.text = new StringBuilder(text);
    separator = findSeparator();
    index();
  }

  /** The text of a file, with its byte order mark if it has one. */
  public static CsvText of(String text) {
    return new CsvText(text);
  }

  /** A file of one row, separated by commas. */
  public static CsvText of(List<String> header) {
    CsvText csv = new CsvText("");
    csv.add(header);
    return csv;
  }

  /** The line in which the header begins, from 1; 0 for a text without rows. */
  public int headerLine() {
    return rows.isEmpty() ? 0 : rows.firstKey();
  }

  /** Lines in which the rows below the header begin. */
  public List<Integer> lines() {
    return rows.keySet().stream().skip(1).toList();
  }

  /** The cells of the row that begins in a line, as they are read. */
  public List<String> cells(int row) {
    return spans(row).stream().map(this::read).toList();
  }

  /** What separates cells. */
  public char separator() {
    return separator;
  }

  /** Exchanges a cell; a row that is too short for it gets empty ones before. */
  public void set(int row, int column, String value) {
    List<Span> spans = spans(row);
    if (column < spans.size()) {
      Span span = spans.get(column);
      boolean quoted = span.to() > span.from() && text.charAt(span.from()) == '"';
      replace(span.from(), span.to(), written(value, quoted));
    } else {
      int end = spans.get(spans.size() - 1).to();
      String empty = String.valueOf(separator).repeat(column - spans.size() + 1);
      replace(end, end, empty + written(value, false));
    }
  }

  /** Adds a row at the end. */
  public void add(List<String> cells) {
    String end = lineEnd();
    boolean open =
        !text.isEmpty() && text.charAt(text.length() - 1) != end.charAt(end.length() - 1);
    List<String> written = cells.stream().map(cell -> written(cell, false)).toList();
    String row = String.join(String.valueOf(separator), written) + end;
    replace(text.length(), text.length(), (open ? end : "") + row);
  }

  @Override
  public String toString() {
    return text.toString();
  }

  private List<Span> spans(int row) {
    return Optional.ofNullable(rows.get(row))
        .orElseThrow(() -> new IllegalArgumentException("no row begins in line " + row));
  }

  private void replace(int from, int to, String by) {
    text.replace(from, to, by);
    rows.clear();
    index();
  }

  private String written(String value, boolean quoted) {
    boolean needs =
        quoted
            || value.indexOf(separator) >= 0
            || value.indexOf('"') >= 0
            || !value.equals(Blank.strip(value))
            || value.chars().anyMatch(c -> c == '\n' || c == '\r');
    return needs ? '"' + value.replace("\"", "\"\"") + '"' : value;
  }

  private String read(Span span) {
    String raw = text.substring(span.from(), span.to());
    return raw.startsWith("\"")
        ? Blank.strip(raw.substring(1, raw.length() - 1).replace("\"\"", "\""))
        : raw;
  }

  /** How lines end in it: as the first one does. */
  private String lineEnd() {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\r') {
        return i + 1 < text.length() && text.charAt(i + 1) == '\n' ? "\r\n" : "\r";
      }
      if (text.charAt(i) == '\n') {
        return "\n";
      }
    }
    return "\n";
  }

  private char findSeparator() {
    String first =
        text.toString().lines().filter(l -> !Blank.strip(l).isEmpty()).findFirst().orElse("");
    Optional<Character> declared = Separator.declared(first);
    return declared.orElse(Separator.guess(first));
  }

  /** Finds the cells of every row; a first line that only names the separator is no row. */
  private void index() {
    at = 0;
    line = 1;
    boolean begun = false;
    while (at < text.length()) {
      int row = line;
      int from = at;
      List<Span> spans = row();
      boolean blank = spans.stream().allMatch(span -> read(span).isEmpty());
      String raw = text.substring(from, spans.get(spans.size() - 1).to());
      boolean declares = !begun && !blank && Separator.declared(Blank.strip(raw)).isPresent();
      begun |= !blank;
      if (!blank && !declares) {
        rows.put(row, spans);
      }
    }
  }

  /** The cells of a row, after which the next one begins. */
  private List<Span> row() {
    List<Span> spans = new ArrayList<>();
    boolean more = true;
    while (more) {
      spans.add(cell());
      more = at < text.length() && text.charAt(at) == separator;
      at += more ? 1 : 0;
    }
    endLine();
    return spans;
  }

  private Span cell() {
    int from = skipBlank(at);
    at = from;
    if (at < text.length() && text.charAt(at) == '"') {
      at = afterQuotes(at + 1);
      int to = at;
      at = skipBlank(at);
      return new Span(from, to);
    }
    while (at < text.length() && text.charAt(at) != separator && !isEnd(text.charAt(at))) {
      at++;
    }
    int to = at;
    while (to > from && Blank.is(text.charAt(to - 1))) {
      to--;
    }
    return new Span(from, to);
  }

  private int afterQuotes(int from) {
    int i = from;
    while (i < text.length()) {
      boolean quote = text.charAt(i) == '"';
      boolean doubled = quote && i + 1 < text.length() && text.charAt(i + 1) == '"';
      if (quote && !doubled) {
        return i + 1;
      }
      boolean pair = text.charAt(i) == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      line += isEnd(text.charAt(i)) ? 1 : 0;
      i += doubled || pair ? 2 : 1;
    }
    return i;
  }

  /** Over white space within the line; a separator may be white space itself. */
  private int skipBlank(int from) {
    int i = from;
    while (i < text.length()
        && Blank.is(text.charAt(i))
        && text.charAt(i) != separator
        && !isEnd(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private void endLine() {
    if (at < text.length()) {
      boolean pair =
          text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
      at += pair ? 2 : 1;
      line++;
    }
  }

  private static boolean isEnd(char c) {
    return c == '\n' || c == '\r';
  }

  /** A row of cells by their place, empty where none is given. */
  public static List<String> row(int width, Map<Integer, String> cells) {
    List<String> row = new ArrayList<>();
    for (int i = 0; i < width; i++) {
      row.add(cells.getOrDefault(i, ""));
    }
    return row;
  }
}
