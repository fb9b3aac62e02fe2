package pressweek.app.web;

import static pressweek.app.web.Route.get;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Tick;
import pressweek.reports.pulls.PullReport;
import pressweek.reports.pulls.PullRow;

/** What the material handlers found missing, for whoever plans the week. */
final class ShortRoutes {
  private final Desk desk;
  private final Floor floor;

  ShortRoutes(Desk desk, Floor floor) {
    this.desk = desk;
    this.floor = floor;
  }

  List<Route> routes() {
    return List.of(
        get("/api/shorts", Right.WEEK, "pulls of the floor's plan found short", this::shorts));
  }

  private void shorts(Asked asked) throws StoreTrouble {
    ObjectNode json = Asked.object();
    ArrayNode rows = json.putArray("rows");
    Optional<FloorPlan> plan = floor.shown();
    if (plan.isPresent()) {
      PullKeys keys = new PullKeys(plan.get().book());
      Map<String, PullRow> pulls = new LinkedHashMap<>();
      PullReport.rows(plan.get().book()).forEach(r -> pulls.put(keys.of(r.pull()), r));
      Map<String, Tick> ticks = desk.store().ticks().standing(List.copyOf(pulls.keySet()));
      pulls.forEach(
          (key, row) ->
              Optional.ofNullable(ticks.get(key))
                  .filter(t -> t.shortPieces() > 0)
                  .ifPresent(t -> row(rows.addObject(), row, t)));
    }
    asked.answer(json);
  }

  private static void row(ObjectNode json, PullRow row, Tick tick) {
    json.put("press", row.pull().press());
    json.put("line", row.line().map(l -> l.order() + "/" + l.line()).orElse(row.pull().run()));
    json.put("insert", row.pull().insert()).put("words", row.named().words());
    json.put("unit", row.named().component().unit());
    json.put("needBy", row.needByMin()).put("needed", row.pull().pieces());
    json.put("short", tick.shortPieces()).put("reason", tick.reason());
    json.put("by", tick.stamp().by());
    json.put("at", Math.floorDiv(tick.stamp().client().getEpochSecond(), 60L));
  }
}
