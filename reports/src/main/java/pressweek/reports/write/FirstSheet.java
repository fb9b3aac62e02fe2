package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Worksheet;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.problem.NotChecked;
import pressweek.reports.schedule.Cautions;
import pressweek.reports.schedule.Headline;

/** The first sheet of a workbook: who the plan is, what it amounts to, what to mind. */
final class FirstSheet {
  private static final String TIME_FORMAT = "yyyy-mm-dd hh:mm";

  private final Worksheet sheet;
  private final Edition edition;
  private int row;

  private FirstSheet(Worksheet sheet, Edition edition) {
    this.sheet = sheet;
    this.edition = edition;
  }

  static void write(Worksheet sheet, Edition edition) {
    new FirstSheet(sheet, edition).write();
  }

  private void write() {
    Plan plan = edition.plan();
    Head head = plan.head();
    sheet.width(0, 16);
    sheet.width(1, 110);
    text("plan", head.number());
    text("plant", plan.problem().plant().name());
    text("replaces", head.replaces().isEmpty() ? "none" : head.replaces());
    time("made", head.madeMin());
    time("written", edition.writtenMin());
    text("times", "on the plant's clock, " + edition.book().clock().zone());
    lines("BREAKS HARD RULES, do not run", edition.findings());
    List<String> sentences = new ArrayList<>(Headline.figures(plan));
    if (edition.sound()) {
      sentences.addAll(Headline.cost(plan));
    }
    lines("in short", sentences);
    lines("not checked", plan.problem().notChecked().stream().map(FirstSheet::words).toList());
    lines("caution", Cautions.of(edition.book()));
  }

  private static String words(NotChecked one) {
    return one.what() + (one.add().isBlank() ? "" : " (add " + one.add() + ")");
  }

  private void lines(String label, List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      text(i == 0 ? label : "", lines.get(i));
    }
  }

  private void text(String label, String text) {
    label(label);
    sheet.value(row, 1, FormulaGuard.guarded(text));
    sheet.style(row, 1).wrapText(true).verticalAlignment("top").horizontalAlignment("left").set();
    row++;
  }

  private void time(String label, int minute) {
    label(label);
    sheet.value(row, 1, edition.book().clock().at(minute).toLocalDateTime());
    sheet.style(row, 1).format(TIME_FORMAT).horizontalAlignment("left").set();
    row++;
  }

  private void label(String label) {
    if (!label.isEmpty()) {
      sheet.value(row, 0, label);
      sheet.style(row, 0).bold().wrapText(true).verticalAlignment("top").set();
    }
  }
}
