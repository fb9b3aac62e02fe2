package pressweek.reports.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Run;
import pressweek.data.problem.NotChecked;
import pressweek.data.problem.Unplaced;
import pressweek.reports.hours.Minutes;

/** What a scheduler reads in the terminal after a plan is made, in lines of at most 80 columns. */
public final class Summary {
  private static final int SHOWN = 20;

  private final PlanBook book;
  private final Plan plan;
  private final List<String> findings;
  private final TextLines out = new TextLines(80);

  private Summary(Plan plan, List<String> findings) {
    this.book = PlanBook.of(plan);
    this.plan = plan;
    this.findings = findings;
  }

  /** The summary of a plan that keeps its hard rules, without files. */
  public static String text(Plan plan) {
    return text(plan, List.of(), List.of());
  }

  /**
   * The summary of a plan.
   *
   * @param plan the plan
   * @param findings hard rules that an audit found broken, in words; they come first, and nothing
   *     is praised then
   * @param files what was written, as the reader may open it
   */
  public static String text(Plan plan, List<String> findings, List<String> files) {
    return new Summary(plan, findings).write(files);
  }

  private String write(List<String> files) {
    identity();
    broken();
    List<String> sentences = new ArrayList<>(Headline.figures(plan));
    if (findings.isEmpty()) {
      sentences.addAll(Headline.cost(plan));
    }
    out.heading("");
    sentences.forEach(s -> out.line("", s));
    late();
    unplaced();
    notChecked();
    if (findings.isEmpty()) {
      comparison();
    }
    if (!files.isEmpty()) {
      out.heading("Written");
      folders(files).forEach(f -> out.line("  ", f));
    }
    return out.toString();
  }

  /** The files beside {@code index.html}, and how many are in each folder below it. */
  private static List<String> folders(List<String> files) {
    String top = files.stream().min(Comparator.comparingInt(String::length)).orElse("");
    int root = Math.max(top.lastIndexOf('/'), top.lastIndexOf('\\')) + 1;
    Map<String, Integer> lines = new LinkedHashMap<>();
    for (String file : files) {
      int end = Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1;
      lines.merge(end > root ? file.substring(0, end) : file, 1, Integer::sum);
    }
    return lines.entrySet().stream()
        .map(l -> l.getValue() == 1 ? l.getKey() : l.getKey() + " (" + l.getValue() + " files)")
        .toList();
  }

  private void identity() {
    Head head = plan.head();
    String plant = plan.problem().plant().name();
    String replaces = head.replaces().isEmpty() ? "" : ", replaces " + head.replaces();
    out.line(
        "",
        (plant.isBlank() ? "" : plant + ": ")
            + "plan "
            + head.number()
            + replaces
            + ", made "
            + book.clock().moment(head.madeMin()));
  }

  private void broken() {
    if (!findings.isEmpty()) {
      out.heading("THIS PLAN BREAKS HARD RULES. DO NOT RUN IT.");
      findings.forEach(f -> out.line("  - ", f));
    }
  }

  private void late() {
    List<Run> late = book.lateRuns();
    if (late.isEmpty()) {
      return;
    }
    out.heading("Late");
    for (Run run : late.subList(0, Math.min(SHOWN, late.size()))) {
      out.line(
          "  ",
          run.job()
              + " "
              + book.job(run).item().code()
              + ": due "
              + book.clock().brief(book.job(run).deadline().dueMin())
              + ", ready "
              + book.clock().brief(run.readyMin())
              + ", "
              + Minutes.words(book.lateMin(run))
              + " late");
      out.line("      ", "on " + run.press() + ": " + String.join("; ", Reasons.late(book, run)));
    }
    more(late.size(), "late line");
  }

  private void unplaced() {
    List<Unplaced> all = plan.unplaced();
    if (all.isEmpty()) {
      return;
    }
    out.heading("Unplaced");
    for (Unplaced line : all.subList(0, Math.min(SHOWN, all.size()))) {
      out.line("  ", line.id() + " " + line.item() + ": " + line.reason());
      out.line("      ", "cure: " + line.cure());
    }
    more(all.size(), "unplaced line");
  }

  private void more(int all, String what) {
    if (all > SHOWN) {
      out.line("  ", "and " + Headline.counted(all - SHOWN, "more " + what) + " in the lists");
    }
  }

  private void notChecked() {
    List<NotChecked> all = plan.problem().notChecked();
    if (all.isEmpty()) {
      return;
    }
    out.heading("Not checked this week");
    for (NotChecked one : all) {
      String lines = one.lines() == 0 ? "" : ", touches " + Headline.counted(one.lines(), "line");
      out.line("  - ", one.what() + " (add " + one.add() + lines + ")");
    }
  }

  private void comparison() {
    List<Reference> ways = plan.head().references();
    if (ways.isEmpty()) {
      return;
    }
    out.heading("Beside simple ways of planning");
    boolean money = plan.problem().plant().rates().shown();
    row("", "late or out", "change time", money ? "avoidable cost" : "");
    row(
        "this plan",
        new Reference(
            "",
            plan.figures().avoidableCost(),
            Comparison.lateOrLeftOut(plan),
            plan.figures().changeMin()));
    ways.forEach(w -> row(w.name(), w));
  }

  private void row(String name, Reference way) {
    boolean money = plan.problem().plant().rates().shown();
    row(
        name,
        Integer.toString(way.lateLines()),
        Minutes.hours(way.changeMin()),
        money ? Money.figure(way.avoidableCost()) : "");
  }

  private void row(String name, String lines, String minutes, String cost) {
    String fitted = name.length() > 30 ? name.substring(0, 29) + "\u2026" : name;
    out.verbatim(
        String.format(Locale.ROOT, "  %-30s %12s %14s %16s", fitted, lines, minutes, cost)
            .stripTrailing());
  }
}
