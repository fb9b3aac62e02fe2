package pressweek.reports.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.NotChecked;
import pressweek.reports.hours.Minutes;
import pressweek.reports.markup.Anchor;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.Money;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.Reasons;

/**
 * The first sheet: who the plan is, what it amounts to, what was not checked, what is late and why.
 */
final class SummarySheet {
  private final PlanBook book;
  private final Plan plan;
  private final List<String> findings;

  SummarySheet(PlanBook book, List<String> findings) {
    this.book = book;
    this.plan = book.plan();
    this.findings = List.copyOf(findings);
  }

  /** Title and identity. */
  List<Element> heading() {
    Head head = plan.head();
    String replaces = head.replaces().isEmpty() ? "" : ", replaces " + head.replaces();
    String plant = plan.problem().plant().name();
    String made = "made " + book.clock().moment(head.madeMin());
    return List.of(
        Element.of("h1").text(plant.isBlank() ? "The week's plan" : plant),
        Element.of("p", "identity").text("Plan " + head.number() + replaces + ", " + made));
  }

  /** Banner, sentences, what was not checked, late lines. */
  List<Element> content() {
    List<Element> parts = new ArrayList<>();
    banner(parts);
    List<String> sentences = new ArrayList<>(Headline.figures(plan));
    if (findings.isEmpty()) {
      sentences.addAll(Headline.cost(plan));
    }
    parts.add(Element.of("p", "lead").text(String.join(" ", sentences)));
    notChecked(parts);
    late(parts);
    return parts;
  }

  private void banner(List<Element> parts) {
    if (findings.isEmpty()) {
      return;
    }
    Element list = Element.of("ul");
    findings.forEach(f -> list.add("li", f));
    parts.add(
        Element.of("div", "banner")
            .attr("role", "alert")
            .add("h2", "This plan breaks hard rules. Do not run it.")
            .add("p", "Its figures below are as the plan states them and cannot be relied on.")
            .add(list));
  }

  private void notChecked(List<Element> parts) {
    List<NotChecked> all = plan.problem().notChecked();
    Element box = Element.of("div", "notchecked").add("h2", "Not checked this week");
    if (all.isEmpty()) {
      box.add("p", "Nothing was left unchecked for want of data.");
    } else {
      Element list = Element.of("ul");
      all.forEach(n -> list.add(line(n)));
      box.add(list);
      all.stream()
          .max(Comparator.comparingInt(NotChecked::lines))
          .filter(n -> n.lines() > 0 && all.size() > 1)
          .ifPresent(n -> box.add("p", "What would add most: " + n.add() + "."));
    }
    parts.add(box);
  }

  private static Element line(NotChecked one) {
    String lines = one.lines() == 0 ? "" : ", touches " + Headline.counted(one.lines(), "line");
    String add = one.add().isBlank() ? "" : "add " + one.add();
    return Element.of("li")
        .text(one.what() + " ")
        .add(Element.of("span", "muted").text("(" + add + lines + ")"));
  }

  private void late(List<Element> parts) {
    List<Run> late = book.lateRuns();
    parts.add(Element.of("h2").attr("id", "late").text("Late lines"));
    if (late.isEmpty()) {
      parts.add(Element.of("p").text("No planned line is late."));
      return;
    }
    parts.add(
        new PageTable<Run>("late")
            .cell("line", r -> Element.of("td", "key").add(link(r)))
            .pair("item", r -> book.job(r).item().code(), r -> book.job(r).line().customer())
            .text("due", r -> book.clock().brief(book.job(r).deadline().dueMin()))
            .text("ready", r -> book.clock().brief(r.readyMin()))
            .figure("late", r -> Minutes.words(book.lateMin(r)))
            .text("press", Run::press)
            .text("why", r -> String.join("; ", why(r)) + ".")
            .rows(late)
            .element());
  }

  private static Element link(Run run) {
    return Element.of("a").attr("href", "#" + Anchor.run(run.id())).text(run.job());
  }

  private List<String> why(Run run) {
    List<String> why = new ArrayList<>(Reasons.late(book, run));
    if (findings.isEmpty()) {
      run.charges().stream()
          .filter(c -> c.rule() == Rule.LATE)
          .map(this::charged)
          .filter(c -> !c.isBlank())
          .forEach(why::add);
    }
    return why;
  }

  private String charged(Charge charge) {
    boolean shown = plan.problem().plant().rates().shown();
    String amount = shown ? Money.words(plan.problem().plant().rates(), charge.amount()) : "";
    String because = charge.because();
    return amount.isEmpty() || because.isBlank() ? because + amount : because + ": " + amount;
  }
}
