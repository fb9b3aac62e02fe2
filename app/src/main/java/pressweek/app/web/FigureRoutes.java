package pressweek.app.web;

import static pressweek.app.web.Route.get;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import pressweek.app.desk.Desk;
import pressweek.app.desk.Standing;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.GivenPlan;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Press;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.PlanBook;

/** What the week amounts to. */
final class FigureRoutes {
  private static final int SHOWN = 50;

  private final Desk desk;

  FigureRoutes(Desk desk) {
    this.desk = desk;
  }

  List<Route> routes() {
    return List.of(get("/api/figures", Right.FIGURES, "what the week amounts to", this::figures));
  }

  private void figures(Asked asked) throws StoreTrouble {
    ObjectNode json = Asked.object();
    ArrayNode plans = json.putArray("plans");
    for (GivenPlan.Head head : desk.store().plans().heads(SHOWN)) {
      plans
          .addObject()
          .put("number", head.number())
          .put("by", head.given().by())
          .put("why", head.given().why())
          .put("at", head.given().at().getEpochSecond() / 60);
    }
    desk.standing().map(Standing::week).ifPresent(w -> plan(json, w.plan()));
    asked.answer(json);
  }

  private static void plan(ObjectNode json, Plan plan) {
    json.put("plan", plan.head().number());
    json.put("zone", plan.problem().plant().hours().zone().getId());
    json.put("currency", plan.problem().plant().rates().currency());
    json.put("money", plan.problem().plant().rates().shown());
    json.put(
        "sentence",
        String.join(" ", Headline.figures(plan)) + " " + String.join(" ", Headline.cost(plan)));
    Figures f = plan.figures();
    ArrayNode rows = json.putArray("rows");
    row(rows, "placed", "order lines in the plan", f.placedLines(), "lines");
    row(rows, "unplaced", "order lines that are not", f.unplacedLines(), "lines");
    row(rows, "late", "order lines ready after they are due", f.lateLines(), "lines");
    row(rows, "late_min", "time late, all lines together", f.lateMin(), "minutes");
    row(rows, "changes", "changes and molds taken off", f.changes(), "changes");
    row(rows, "change_min", "time of changes", f.changeMin(), "minutes");
    row(rows, "purge_g", "resin purged", f.purgeG(), "grams");
    ArrayNode costs = json.putArray("costs");
    for (Map.Entry<Rule, Long> cost : new java.util.TreeMap<>(f.costByRule()).entrySet()) {
      costs
          .addObject()
          .put("rule", RuleWords.of(cost.getKey()))
          .put("words", cost.getKey().sentence())
          .put("amount", cost.getValue());
    }
    PlanBook book = PlanBook.of(plan);
    ArrayNode presses = json.putArray("byPress");
    book.presses().forEach(p -> press(presses.addObject(), book, p));
  }

  private static void row(ArrayNode rows, String name, String words, long value, String unit) {
    rows.addObject().put("name", name).put("words", words).put("value", value).put("unit", unit);
  }

  /** Minutes of a press: worked in shifts, running, changing; what is left is empty or waiting. */
  private static void press(ObjectNode json, PlanBook book, Press press) {
    List<Span> hours = book.working(press);
    int worked =
        hours.stream().mapToInt(s -> s.within(book.extent()).minutes()).filter(m -> m > 0).sum();
    int running = 0;
    int changing = 0;
    for (Run run : book.runsOn(press)) {
      running += inside(hours, new Span(run.startMin(), run.endMin()));
      changing += run.change().minutes();
    }
    for (Dismount d : book.plan().dismounts()) {
      changing += d.press().equals(press.id()) ? d.minutes() : 0;
    }
    json.put("press", press.id()).put("worked", worked);
    json.put("run", running).put("change", changing).put("runs", book.runsOn(press).size());
  }

  private static int inside(List<Span> hours, Span run) {
    return hours.stream().mapToInt(s -> Math.max(0, s.within(run).minutes())).sum();
  }
}
