package pressweek.app.cli;

import java.util.List;
import java.util.Locale;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Unplaced;
import pressweek.reports.hours.Minutes;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.schedule.Money;
import pressweek.reports.schedule.TextLines;
import pressweek.solver.why.Cure;
import pressweek.solver.why.Explanation;
import pressweek.solver.why.Placement;
import pressweek.solver.why.Stretch;

/** An explanation as text of at most 80 columns. */
final class WhyPrinter {
  private static final int WIDTH = 80;
  private static final String STEP = "  ";

  private final Plan plan;
  private final Explanation why;
  private final PlantClock clock;
  private final Rates rates;
  private final TextLines out = new TextLines(WIDTH);

  private WhyPrinter(Plan plan, Explanation why) {
    this.plan = plan;
    this.why = why;
    clock = PlantClock.of(plan.problem().plant().hours());
    rates = plan.problem().plant().rates();
  }

  static String text(Plan plan, Explanation why) {
    return new WhyPrinter(plan, why).write();
  }

  private String write() {
    head();
    why.unplaced().ifPresent(this::unplaced);
    charges();
    chain();
    elsewhere();
    cures();
    out.heading("");
    return out.toString();
  }

  private void head() {
    String item = why.job().map(j -> " " + j.item().code()).orElse("");
    out.line("", "line " + why.line() + item + " in plan " + plan.head().number());
    why.job()
        .ifPresent(
            job -> why.run().ifPresent(run -> out.line("", ready(run, job.deadline().dueMin()))));
  }

  private String ready(Run run, int dueMin) {
    String late = why.lateMin() == 0 ? "on time" : Minutes.words(why.lateMin()) + " late";
    return "due %s, ready %s: %s; on %s with mold %s"
        .formatted(clock.brief(dueMin), clock.brief(run.readyMin()), late, run.press(), run.mold());
  }

  private void unplaced(Unplaced line) {
    out.line("", "not in the plan: " + line.reason());
    out.line("", "cure: " + line.cure());
  }

  private void charges() {
    if (why.charges().isEmpty()) {
      out.heading(why.job().isPresent() ? "It costs nothing that a plan could avoid." : "");
      return;
    }
    out.heading("What it costs" + (rates.shown() ? ": " + Money.words(rates, why.cost()) : ""));
    for (Charge charge : why.charges()) {
      String amount = rates.shown() ? Money.words(rates, charge.amount()) + "  " : "";
      String because = charge.because().isBlank() ? "" : " (" + charge.because() + ")";
      out.line(STEP, amount + charge.rule().sentence() + because);
    }
  }

  private void chain() {
    if (why.chain().isEmpty()) {
      return;
    }
    int total = why.chain().stream().mapToInt(Stretch::minutes).sum();
    out.heading("Where the time goes from the start of the plan: " + Minutes.words(total));
    for (Stretch stretch : why.chain()) {
      String lead =
          STEP
              + String.format(
                  Locale.ROOT,
                  "%-10s %14s  ",
                  clock.brief(stretch.fromMin()),
                  Minutes.words(stretch.minutes()));
      out.line(lead, words(stretch));
    }
  }

  private String words(Stretch stretch) {
    String of = stretch.line().equals(why.line()) ? "" : " of " + stretch.line();
    String because = stretch.because().isBlank() ? "" : ": " + stretch.because();
    if (stretch.waited().isPresent()) {
      Wait wait = stretch.waited().get();
      String what = wait.what().isEmpty() ? "" : " (" + wait.what() + ")";
      return wait.cause().words()
          + what
          + (of.isEmpty() ? "" : ", for" + of.substring(3))
          + because;
    }
    return stretch.what().words() + of + because;
  }

  private void elsewhere() {
    if (why.job().isEmpty()) {
      return;
    }
    out.heading("Where else it could go");
    if (why.elsewhere().isEmpty()) {
      out.line(STEP, "nowhere: it is running, promised, or has one place only");
    }
    why.elsewhere().forEach(p -> out.line(STEP, words(p)));
  }

  private String words(Placement place) {
    String late = place.lateMin() == 0 ? "on time" : Minutes.words(place.lateMin()) + " late";
    String after = place.after().isEmpty() ? "first" : "after " + place.after();
    return "%s with mold %s, %s, from %s: %s%s"
        .formatted(
            place.press(),
            place.mold(),
            after,
            clock.brief(place.startMin()),
            late,
            price(place.costsMore()));
  }

  private String price(long more) {
    if (!rates.shown()) {
      return "";
    }
    String sum = Money.words(rates, Math.abs(more));
    return more == 0 ? ", costs as much" : ", costs " + sum + (more > 0 ? " more" : " less");
  }

  private void cures() {
    boolean asked = why.job().isPresent() && (why.lateMin() > 0 || why.run().isEmpty());
    if (!asked) {
      return;
    }
    out.heading("What would cure it, the cure's own price not counted");
    List<Cure> helping = why.cures().helping();
    if (helping.isEmpty()) {
      out.line(
          STEP,
          why.cures().tried() == 0
              ? "nothing that it waits for could be tried"
              : "none of %s helps".formatted(Counts.of(why.cures().tried(), "change") + " tried"));
    }
    helping.forEach(c -> out.line(STEP, words(c)));
  }

  private String words(Cure cure) {
    String late = cure.lateMin() == 0 ? "on time" : Minutes.words(cure.lateMin()) + " late";
    return cure.what() + ": " + late + price(cure.costsMore());
  }
}
