package pressweek.app.cli;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines that fit a terminal of 80 columns. */
final class Paragraph {
  private static final int WIDTH = 80;

  private Paragraph() {}

  /**
   * The lines of a text.
   *
   * @param head what the first line begins with; further lines are indented by as many columns
   * @param text the text, broken at spaces; a word that is too long stays whole
   */
  static List<String> of(String head, String text) {
    String indent = " ".repeat(head.length());
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(head);
    boolean empty = true;
    for (String word : text.split(" ")) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
