package pressweek.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import pressweek.data.guide.CodeFault;
import pressweek.data.guide.CodeReading;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Origin;
import pressweek.data.week.Explained;

/** Prints what an item code means, with its parts marked, or with a caret under its fault. */
final class CodePrinter {
  private static final int SHOWN = 8;
  private static final int WIDEST = 18;
  private static final int LONGEST = 78;

  private final PrintWriter out;

  CodePrinter(PrintWriter out) {
    this.out = out;
  }

  /** Prints a code and what it leads to. */
  void print(Explained explained) {
    code(explained);
    attributes(explained.attributes());
    for (Explained.Maker maker : explained.makers()) {
      String where =
          maker.presses().isEmpty()
              ? "no press: " + few(maker.objections())
              : "on " + few(maker.presses());
      Paragraph.of("  mold " + maker.mold() + "  ", where).forEach(out::println);
    }
    if (!explained.good()) {
      String trouble =
          explained.reading().fault().map(CodeFault::sentence).orElse(explained.trouble());
      Paragraph.of("  ", trouble).forEach(out::println);
      Paragraph.of("  cure: ", explained.cure()).forEach(out::println);
    }
  }

  private void code(Explained explained) {
    String family = explained.family().isEmpty() ? "" : "  (" + explained.family() + ")";
    String code = explained.code().replaceAll("\\p{Cntrl}", "\uFFFD");
    if (code.length() > LONGEST) {
      out.println(code.substring(0, LONGEST - 3) + "...");
      return;
    }
    out.println(code + (code.length() + family.length() > LONGEST ? "" : family));
    if (explained.reading().fault().isPresent()) {
      CodeFault fault = explained.reading().fault().get();
      out.println(" ".repeat(fault.start()) + "^".repeat(Math.max(1, fault.length())));
      return;
    }
    out.println(numbers(explained.reading().pieces()));
    int place = 1;
    for (CodeReading.Piece piece : explained.reading().pieces()) {
      String words = piece.words().isEmpty() ? "" : ": " + piece.words();
      String head = "  " + place + " " + pad(piece.text(), WIDEST) + " ";
      Paragraph.of(head, piece.part() + words).forEach(out::println);
      place++;
    }
    if (!explained.canonical().equals(code)) {
      out.println("  the guide writes it " + explained.canonical());
    }
  }

  /** The number of each part under its first character. */
  private static String numbers(List<CodeReading.Piece> pieces) {
    StringBuilder line = new StringBuilder();
    int place = 1;
    for (CodeReading.Piece piece : pieces) {
      String number = Integer.toString(place);
      if (line.length() <= piece.start()) {
        line.append(" ".repeat(piece.start() - line.length())).append(number);
      }
      place++;
    }
    return line.toString();
  }

  private void attributes(List<Attribute> attributes) {
    int nameWidth = width(attributes.stream().map(Attribute::name).toList());
    int valueWidth = width(attributes.stream().map(Attribute::value).toList());
    for (Attribute attribute : attributes) {
      String head =
          "  "
              + pad(attribute.name(), nameWidth)
              + "  "
              + pad(attribute.value(), valueWidth)
              + "  ";
      Paragraph.of(head, origin(attribute)).forEach(out::println);
    }
  }

  private static int width(List<String> texts) {
    return Math.min(WIDEST, texts.stream().mapToInt(String::length).max().orElse(0));
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  /** Where it came from; the words of a part of the code stand beside that part already. */
  private static String origin(Attribute attribute) {
    String because = attribute.because();
    int quote = attribute.origin() == Origin.CODE ? because.indexOf(" \"") : -1;
    String origin = attribute.origin().name().toLowerCase(Locale.ROOT);
    return origin + ": " + (quote < 0 ? because : because.substring(0, quote));
  }

  private static String few(List<String> all) {
    int shown = Math.min(SHOWN, all.size());
    String more = all.size() > shown ? " and " + (all.size() - shown) + " more" : "";
    return String.join(", ", all.subList(0, shown)) + more;
  }
}
