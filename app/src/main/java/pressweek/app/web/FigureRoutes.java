package pressweek.app.web;

import static pressweek.app.web.Route.get;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import pressweek.app.desk.Desk;
import pressweek.app.desk.Standing;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.GivenPlan;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Rates;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.PlanBook;

/** What the week amounts to, and how it stands to the plans given out before. */
final class FigureRoutes {
  private static final int SHOWN = 20;
  private static final double GRAMS_PER_KG = 1000.0;

  private final Desk desk;

  /** Plans given out never change. */
  private final Map<String, Figures> given = new ConcurrentHashMap<>();

  FigureRoutes(Desk desk) {
    this.desk = desk;
  }

  List<Route> routes() {
    return List.of(get("/api/figures", Right.FIGURES, "what the week amounts to", this::figures));
  }

  private void figures(Asked asked) throws StoreTrouble {
    Optional<Standing> now = desk.standing();
    ObjectNode json = Asked.object().put("plan", "").put("draft", false).put("currency", "");
    json.put("money", false).put("sentence", Floor.NO_PLAN);
    ArrayNode rows = json.putArray("rows");
    ArrayNode costs = json.putArray("costs");
    ArrayNode presses = json.putArray("byPress");
    if (now.isPresent()) {
      Plan plan = now.get().week().plan();
      head(json, plan, !now.get().givenOut());
      rows(rows, plan);
      costs(costs, plan.figures());
      PlanBook book = PlanBook.of(plan);
      book.presses().forEach(p -> presses.add(PressHours.of(book, p).json()));
    }
    plans(json.putArray("plans"), now);
    asked.answer(json);
  }

  private static void head(ObjectNode json, Plan plan, boolean draft) {
    Rates rates = plan.problem().plant().rates();
    json.put("plan", plan.head().number()).put("draft", draft);
    json.put("zone", plan.problem().plant().hours().zone().getId());
    json.put("currency", rates.currency()).put("money", rates.shown());
    String figures = String.join(" ", Headline.figures(plan));
    json.put("sentence", figures + " " + String.join(" ", Headline.cost(plan)));
  }

  private static void rows(ArrayNode rows, Plan plan) {
    Figures f = plan.figures();
    row(rows, "placed", "order lines in the plan").put("value", f.placedLines()).put("unit", "");
    row(rows, "unplaced", "order lines that are not")
        .put("value", f.unplacedLines())
        .put("unit", "");
    row(rows, "late", "order lines ready after they are due")
        .put("value", f.lateLines())
        .put("unit", "");
    row(rows, "late_min", "time late, all lines together")
        .put("value", f.lateMin())
        .put("unit", "min");
    row(rows, "changes", "changes, and molds taken off").put("value", f.changes()).put("unit", "");
    row(rows, "change_min", "time of changes").put("value", f.changeMin()).put("unit", "min");
    row(rows, "purge_kg", "resin purged").put("value", f.purgeG() / GRAMS_PER_KG).put("unit", "kg");
    row(rows, "cost", "avoidable cost").put("value", f.avoidableCost()).put("unit", "money");
  }

  private static ObjectNode row(ArrayNode rows, String name, String words) {
    return rows.addObject().put("name", name).put("words", words);
  }

  private static void costs(ArrayNode costs, Figures figures) {
    for (Map.Entry<Rule, Long> cost : new TreeMap<>(figures.costByRule()).entrySet()) {
      costs
          .addObject()
          .put("rule", RuleWords.of(cost.getKey()))
          .put("words", cost.getKey().sentence())
          .put("amount", cost.getValue());
    }
  }

  /** The week on the desk, unless the floor has it, then what was given out, the newest first. */
  private void plans(ArrayNode plans, Optional<Standing> now) throws StoreTrouble {
    if (now.isPresent() && !now.get().givenOut()) {
      Plan plan = now.get().week().plan();
      plan(plans.addObject(), plan.head().number(), now.get().state().made(), plan.figures())
          .put("givenOut", false);
    }
    for (GivenPlan.Head head : desk.store().plans().heads(SHOWN)) {
      Optional<Figures> figures = figuresOf(head.number());
      if (figures.isPresent()) {
        plan(plans.addObject(), head.number(), head.given(), figures.get()).put("givenOut", true);
      }
    }
  }

  private Optional<Figures> figuresOf(String number) throws StoreTrouble {
    if (!given.containsKey(number)) {
      desk.givenOut(number).ifPresent(p -> given.put(number, p.figures()));
    }
    return Optional.ofNullable(given.get(number));
  }

  private static ObjectNode plan(ObjectNode json, String number, Change made, Figures figures) {
    Instant at = made.at();
    return json.put("number", number)
        .put("at", Math.floorDiv(at.getEpochSecond(), 60L))
        .put("by", made.by())
        .put("why", made.why())
        .put("cost", figures.avoidableCost())
        .put("late", figures.lateLines());
  }
}
