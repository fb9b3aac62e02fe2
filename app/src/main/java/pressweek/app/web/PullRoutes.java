package pressweek.app.web;

import static pressweek.app.web.Route.get;
import static pressweek.app.web.Route.post;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.BadRequestResponse;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.app.desk.Desk;
import pressweek.app.desk.DeskEvent;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Tick;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Press;
import pressweek.reports.pulls.PullReport;
import pressweek.reports.pulls.PullRow;
import pressweek.reports.schedule.PlanBook;

/** Pulls of the plan that the floor has, and the ticks on them. */
final class PullRoutes {
  private static final int MOST_TICKS = 500;

  private final Desk desk;
  private final Floor floor;

  PullRoutes(Desk desk, Floor floor) {
    this.desk = desk;
    this.floor = floor;
  }

  List<Route> routes() {
    return List.of(
        get("/api/pulls", Right.PULLS, "what to bring where by when", this::pulls)
            .asks(Field.text("press", "presses, separated by commas").inQuery().unneeded()),
        post(
                "/api/ticks",
                Right.TICK,
                "ticks pulls off; the same tick again changes nothing",
                this::ticks)
            .asks(
                Field.of(
                    "ticks",
                    "array",
                    "objects of id (a UUID), key, pieces, short, reason, by, at, undo")),
        post("/api/scan", Right.PULLS, "which pull a label means", this::scan)
            .asks(Field.text("text", "what the scanner read")));
  }

  private void pulls(Asked asked) throws StoreTrouble {
    Optional<FloorPlan> shown = floor.shown();
    ObjectNode json = Asked.object().put("now", desk.nowMin());
    json.set("plan", ListRoutes.plan(shown));
    ArrayNode presses = json.putArray("presses");
    ArrayNode rows = json.putArray("rows");
    if (shown.isPresent()) {
      PlanBook book = shown.get().book();
      json.put("zone", book.clock().zone().getId());
      book.presses().stream().map(Press::id).forEach(presses::add);
      rows(rows, book, asked.optionalQuery("press").map(p -> Set.copyOf(List.of(p.split(",")))));
    }
    asked.answer(json);
  }

  private void rows(ArrayNode rows, PlanBook book, Optional<Set<String>> presses)
      throws StoreTrouble {
    PullKeys keys = new PullKeys(book);
    List<PullRow> all =
        PullReport.rows(book).stream()
            .filter(r -> presses.isEmpty() || presses.get().contains(r.pull().press()))
            .toList();
    Map<String, Tick> ticks =
        desk.store().ticks().standing(all.stream().map(r -> keys.of(r.pull())).toList());
    for (PullRow row : all) {
      String key = keys.of(row.pull());
      ObjectNode json = rows.addObject().put("key", key);
      row(json, row, book);
      Optional.ofNullable(ticks.get(key))
          .ifPresentOrElse(t -> ticked(json.putObject("ticked"), t), () -> json.putNull("ticked"));
    }
  }

  private static void row(ObjectNode json, PullRow row, PlanBook book) {
    Pull pull = row.pull();
    json.put("run", pull.run()).put("press", pull.press());
    json.put("line", row.line().map(l -> l.line()).orElse(""));
    json.put("order", row.line().map(l -> l.order()).orElse(""));
    json.put("shift", row.shiftId()).put("needBy", row.needByMin());
    json.put("insert", pull.insert()).put("words", row.named().words());
    json.put("component", row.named().component().word());
    json.put("unit", row.named().component().unit());
    json.put("thread", row.named().thread()).put("bin", pull.bin()).put("lot", pull.lot());
    json.put("pieces", pull.pieces()).put("caution", row.caution());
    json.put("receipt", receipt(pull, book));
  }

  /** Where it comes from without a bin, in words; empty when there is no more to say. */
  private static String receipt(Pull pull, PlanBook book) {
    return pull.bin().isEmpty() && pull.receiptMin() > 0
        ? "from the receipt of " + book.clock().moment(pull.receiptMin())
        : "";
  }

  private static void ticked(ObjectNode json, Tick tick) {
    json.put("id", tick.id().toString())
        .put("pieces", tick.pieces())
        .put("short", tick.shortPieces())
        .put("reason", tick.reason())
        .put("by", tick.stamp().by())
        .put("at", Math.floorDiv(tick.stamp().client().getEpochSecond(), 60L));
  }

  private void ticks(Asked asked) throws StoreTrouble {
    JsonNode given = asked.node("ticks");
    if (!given.isArray() || given.size() > MOST_TICKS) {
      throw new BadRequestResponse(
          "\"ticks\" is another thing; expected a list of at most " + MOST_TICKS);
    }
    String plan = floor.shown().map(FloorPlan::number).orElse("");
    GivenTicks.Read read = new GivenTicks(plan, asked.who().name(), asked.at()).read(given);
    new TickBook(desk.store()).add(read.ticks());
    ObjectNode json = Asked.object();
    ArrayNode taken = json.putArray("taken");
    read.ticks().forEach(t -> taken.add(t.tick().id().toString()));
    ArrayNode refused = json.putArray("refused");
    read.refused().forEach((id, why) -> refused.addObject().put("id", id).put("words", why));
    if (!read.ticks().isEmpty()) {
      desk.tell(new DeskEvent.Ticked(asked.who().name()));
    }
    asked.answer(json);
  }

  private void scan(Asked asked) throws StoreTrouble {
    Optional<FloorPlan> shown = floor.shown();
    if (shown.isEmpty()) {
      asked.answer(Asked.object().put("key", "").put("words", Floor.NO_PLAN));
      return;
    }
    PullKeys keys = new PullKeys(shown.get().book());
    Label label = new Label(asked.text("text"), shown.get().number());
    List<PullRow> meant =
        PullReport.rows(shown.get().book()).stream().filter(r -> label.means(r.pull())).toList();
    Map<String, Tick> ticks =
        desk.store().ticks().standing(meant.stream().map(r -> keys.of(r.pull())).toList());
    Optional<PullRow> next =
        meant.stream()
            .filter(r -> !ticks.containsKey(keys.of(r.pull())))
            .min(Comparator.comparingInt(PullRow::needByMin));
    ObjectNode json = Asked.object().put("key", next.map(r -> keys.of(r.pull())).orElse(""));
    asked.answer(json.put("words", label.words(next.map(PullRow::pull), !meant.isEmpty())));
  }
}
