package pressweek.app.cli;

import java.io.PrintWriter;
import pressweek.data.working.Line;
import pressweek.data.working.Section;
import pressweek.data.working.Working;

/** Prints the working of a run in 80 columns. */
final class WorkingPrinter {
  private final PrintWriter out;

  WorkingPrinter(PrintWriter out) {
    this.out = out;
  }

  /** Prints a working, section by section. */
  void print(Working working) {
    Paragraph.of("", working.title()).forEach(out::println);
    for (Section section : working.sections()) {
      out.println();
      out.println(section.title());
      section.lines().forEach(this::print);
    }
  }

  private void print(Line line) {
    if (line instanceof Line.Sum sum) {
      sum(sum);
    } else if (line instanceof Line.Note note) {
      paragraph("  ", note.text());
    } else if (line instanceof Line.Unknown unknown) {
      paragraph("  not known: ", unknown.what());
      unknown.columns().forEach(column -> paragraph("    needed: ", column));
    } else if (line instanceof Line.Caution caution) {
      paragraph("  caution: ", caution.text());
    }
  }

  private void sum(Line.Sum sum) {
    if (sum.formula().isEmpty()) {
      paragraph("  ", sum.what() + " = " + sum.result() + basis(sum) + ", " + sum.numbers());
      return;
    }
    paragraph("  ", sum.what() + " = " + sum.formula());
    paragraph("    = ", sum.numbers() + " = " + sum.result() + basis(sum));
  }

  private static String basis(Line.Sum sum) {
    return switch (sum.basis()) {
      case RECORDED -> " (recorded)";
      case ESTIMATE -> " (estimate)";
      case ARITHMETIC -> "";
    };
  }

  private void paragraph(String head, String text) {
    Paragraph.of(head, text).forEach(out::println);
  }
}
