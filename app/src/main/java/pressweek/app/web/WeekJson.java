package pressweek.app.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.app.desk.Marks;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Unplaced;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.Kinds;
import pressweek.reports.schedule.PlanBook;

/** A plan as the week wall reads it; times are minutes since 1970 UTC. */
final class WeekJson {
  private final Plan plan;
  private final PlanBook book;
  private final Marks marks;
  private final Set<String> promised = new HashSet<>();
  private final Set<String> running = new HashSet<>();
  private final Map<String, Integer> receipts = new HashMap<>();

  WeekJson(Plan plan, Marks marks) {
    this.plan = plan;
    this.marks = marks;
    book = PlanBook.of(plan);
    plan.problem().floor().promises().forEach(p -> promised.add(p.job()));
    plan.problem().floor().states().stream().map(PressState::job).forEach(running::add);
    for (Pull pull : plan.pulls()) {
      receipts.merge(pull.run(), pull.receiptMin(), Math::max);
    }
  }

  /** What the plan is as a whole. */
  void whole(ObjectNode week) {
    week.put("zone", plan.problem().plant().hours().zone().getId());
    week.put("start", plan.problem().plant().hours().startMin());
    week.put("end", plan.problem().plant().hours().endMin());
    week.put("currency", plan.problem().plant().rates().currency());
    week.put("money", plan.problem().plant().rates().shown());
    week.put("sentence", String.join(" ", Headline.figures(plan)));
    week.put("costSentence", String.join(" ", Headline.cost(plan)));
    week.put("cost", plan.figures().avoidableCost());
    week.put("late", plan.figures().lateLines());
    week.put("unplacedCount", plan.figures().unplacedLines());
    ArrayNode gaps = week.putArray("notChecked");
    plan.problem()
        .notChecked()
        .forEach(
            n ->
                gaps.addObject().put("what", n.what()).put("add", n.add()).put("lines", n.lines()));
  }

  /** Shifts and presses. */
  void plant(ObjectNode week) {
    ArrayNode shifts = week.putArray("shifts");
    for (ShiftSpan shift : book.shifts().all()) {
      if (shift.span().overlaps(book.extent())) {
        shifts
            .addObject()
            .put("name", shift.shift())
            .put("from", shift.span().fromMin())
            .put("to", shift.span().toMin());
      }
    }
    ArrayNode presses = week.putArray("presses");
    book.presses().forEach(p -> press(presses.addObject(), p));
  }

  private void press(ObjectNode json, Press press) {
    json.put("id", press.id());
    json.put("orientation", press.build().orientation().name().toLowerCase(java.util.Locale.ROOT));
    json.put("words", String.join(", ", Kinds.words(press)));
    json.put("food", press.food().name());
    ArrayNode hours = json.putArray("hours");
    for (Span span : book.working(press)) {
      if (span.overlaps(book.extent())) {
        hours.addArray().add(span.fromMin()).add(span.toMin());
      }
    }
    ArrayNode away = json.putArray("away");
    for (Downtime d : book.downtime(press)) {
      away.addObject()
          .put("from", d.fromMin())
          .put("to", d.toMin())
          .put("reason", d.reason().isBlank() ? "away" : d.reason());
    }
  }

  /** Runs, dismounts and lines without a run. */
  void work(ObjectNode week) {
    ArrayNode runs = week.putArray("runs");
    plan.runs().forEach(r -> run(runs.addObject(), r));
    ArrayNode dismounts = week.putArray("dismounts");
    for (Dismount d : plan.dismounts()) {
      dismounts
          .addObject()
          .put("press", d.press())
          .put("mold", d.mold())
          .put("from", d.startMin())
          .put("to", d.endMin());
    }
    ArrayNode unplaced = week.putArray("unplaced");
    Set<String> jobs = plan.problem().jobs().stream().map(Job::id).collect(Collectors.toSet());
    plan.unplaced().forEach(u -> unplaced(unplaced.addObject(), u, jobs.contains(u.id())));
  }

  private void unplaced(ObjectNode json, Unplaced line, boolean canPlace) {
    json.put("line", line.id()).put("item", line.item()).put("words", "");
    json.put("reason", line.reason()).put("cure", line.cure()).put("pieces", line.pieces());
    json.put("leftOut", marks.leftOut().containsKey(line.id())).put("canPlace", canPlace);
  }

  void run(ObjectNode json, Run run) {
    Job job = book.job(run);
    json.put("run", run.id()).put("line", run.job()).put("order", job.line().order());
    json.put("customer", job.line().customer()).put("item", job.item().code());
    json.put("words", words(job)).put("press", run.press()).put("mold", run.mold());
    json.put("seq", run.seq());
    json.put("changeFrom", run.change().startMin()).put("changeTo", run.change().endMin());
    json.put("changeMin", run.change().minutes());
    json.put(
        "changeWords",
        run.change().kinds().stream().map(Kinds::words).collect(Collectors.joining(", ")));
    json.put("from", run.startMin()).put("to", run.endMin()).put("ready", run.readyMin());
    json.put("due", job.deadline().dueMin()).put("lateMin", book.lateMin(run));
    json.put("quantity", job.quantity().good());
    material(json, job);
    json.put("food", job.foodGrade());
    json.put("promised", promised.contains(run.job()) && !marks.held().contains(run.job()));
    json.put("held", marks.held().contains(run.job()));
    json.put("running", running.contains(run.job()));
    json.put("cost", run.charges().stream().mapToLong(Charge::amount).sum());
    json.put("inserts", inserts(run));
    waits(json.putArray("waits"), run.waits());
  }

  private void material(ObjectNode json, Job job) {
    json.put("resin", job.resin()).put("colour", job.colour());
    json.put("srgb", book.colour(job.resin(), job.colour()).map(Colour::srgb).orElse(""));
    json.put("insert", job.item().value(Item.INSERT).orElse(""));
  }

  private static String words(Job job) {
    return job.item().attributes().stream()
        .filter(a -> Set.of(Item.HEAD, Item.THREAD, Item.INSERT_KIND).contains(a.name()))
        .map(a -> a.value())
        .collect(Collectors.joining(", "));
  }

  /** When inserts that are not in the house yet may be used: {@code inserts Tue 10:00}. */
  private String inserts(Run run) {
    int receipt = receipts.getOrDefault(run.id(), 0);
    return receipt > plan.problem().plant().hours().startMin()
        ? "inserts " + book.clock().moment(receipt)
        : "";
  }

  private static void waits(ArrayNode json, List<Wait> waits) {
    for (Wait wait : waits) {
      String what = wait.what().isEmpty() ? "" : ": " + wait.what().replace("|", ", ");
      json.addObject()
          .put("words", wait.cause().words() + what)
          .put("from", wait.fromMin())
          .put("to", wait.toMin());
    }
  }
}
