package pressweek.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pressweek.data.words.Assumed;
import pressweek.data.words.Reading;
import pressweek.data.words.Understood;
import pressweek.data.words.WordsAnswer;

/** Prints the readings of a customer's words. */
final class WordsPrinter {
  private static final int LABEL = 12;
  private static final int SAID = 16;
  private static final int LONGEST = 200;

  private WordsPrinter() {}

  /** Prints all readings, the best first. */
  static void print(WordsAnswer answer, PrintWriter out) {
    String words = answer.words();
    String shown = words.length() > LONGEST ? words.substring(0, LONGEST) + "..." : words;
    Paragraph.of("", shown.isBlank() ? "(nothing)" : shown).forEach(out::println);
    int rank = 1;
    for (Reading reading : answer.readings()) {
      print(rank, reading, out);
      rank++;
    }
  }

  /** Prints the one reading that words have. */
  static void print(String words, Reading reading, PrintWriter out) {
    print(new WordsAnswer(words, List.of(reading)), out);
    out.println();
  }

  private static void print(int rank, Reading reading, PrintWriter out) {
    String code = reading.code().isEmpty() ? "no code" : reading.code();
    String family = reading.family().isEmpty() ? "" : "  (" + reading.family() + ")";
    out.println(" " + rank + ". " + code + family);
    Labels understood = new Labels("understood", out);
    for (Understood piece : reading.understood()) {
      understood.line(pad(piece.text(), SAID) + " ", means(piece.means()));
    }
    Labels assumed = new Labels("assumed", out);
    for (Assumed one : reading.assumed()) {
      assumed.line("", means(one.means()) + ": " + one.because());
    }
    list("not read", reading.notUnderstood(), out);
    list("against it", reading.conflicts(), out);
    list("ask", reading.questions(), out);
  }

  private static void list(String label, List<String> texts, PrintWriter out) {
    Labels labels = new Labels(label, out);
    texts.forEach(text -> labels.line("", text));
  }

  private static String means(Map<String, String> means) {
    return means.entrySet().stream()
        .map(entry -> entry.getKey() + " " + entry.getValue())
        .collect(Collectors.joining(", "));
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  /** Lines of which the first one bears a label. */
  private static final class Labels {
    private String label;
    private final PrintWriter out;

    Labels(String label, PrintWriter out) {
      this.label = label;
      this.out = out;
    }

    void line(String head, String text) {
      Paragraph.of("    " + pad(label, LABEL) + head, text).forEach(out::println);
      label = "";
    }
  }
}
