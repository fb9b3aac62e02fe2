package pressweek.app.web;

import static pressweek.app.web.Route.get;
import static pressweek.app.web.Route.post;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.BadRequestResponse;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
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
  private static final int MOST_PIECES = 100_000_000;

  private final Desk desk;
  private final Floor floor;

  PullRoutes(Desk desk) {
    this.desk = desk;
    floor = new Floor(desk);
  }

  List<Route> routes() {
    return List.of(
        get("/api/pulls", Right.PULLS, "what to bring where by when", this::pulls),
        post(
            "/api/ticks",
            Right.TICK,
            "ticks pulls off; the same tick again changes nothing",
            this::ticks),
        post("/api/scan", Right.PULLS, "which pull a label means", this::scan));
  }

  /** What a pull is known by through replans: run, thing and lot. */
  static String key(Pull pull) {
    return pull.run() + "|" + pull.insert() + "|" + pull.lot();
  }

  private void pulls(Asked asked) throws StoreTrouble {
    ObjectNode json = Asked.object();
    ArrayNode rows = json.putArray("rows");
    Optional<Floor.Shown> shown = floor.shown();
    if (shown.isEmpty()) {
      json.putArray("presses");
      asked.answer(json);
      return;
    }
    PlanBook book = PlanBook.of(shown.get().plan());
    json.putObject("plan")
        .put("number", book.plan().head().number())
        .put("draft", shown.get().draft())
        .put("zone", book.clock().zone().getId());
    json.put("now", desk.nowMin());
    ArrayNode presses = json.putArray("presses");
    book.presses().stream().map(Press::id).forEach(presses::add);
    Optional<Set<String>> wanted =
        asked.optionalQuery("press").map(p -> Set.copyOf(List.of(p.split(","))));
    List<PullRow> all =
        PullReport.rows(book).stream()
            .filter(r -> wanted.isEmpty() || wanted.get().contains(r.pull().press()))
            .toList();
    Map<String, Tick> ticks =
        desk.store().ticks().standing(all.stream().map(r -> key(r.pull())).toList());
    all.forEach(r -> row(rows.addObject(), r, Optional.ofNullable(ticks.get(key(r.pull())))));
    asked.answer(json);
  }

  private static void row(ObjectNode json, PullRow row, Optional<Tick> tick) {
    Pull pull = row.pull();
    json.put("key", key(pull)).put("run", pull.run()).put("press", pull.press());
    json.put("line", row.line().map(l -> l.id()).orElse(""));
    json.put("order", row.line().map(l -> l.order()).orElse(""));
    json.put("shift", row.shiftId()).put("needBy", row.needByMin());
    json.put("insert", pull.insert()).put("words", row.named().words());
    json.put("component", row.named().component().word());
    json.put("thread", row.named().thread()).put("bin", pull.bin()).put("lot", pull.lot());
    json.put("pieces", pull.pieces()).put("caution", row.caution());
    json.put("receipt", pull.receiptMin());
    if (tick.isPresent()) {
      json.putObject("ticked")
          .put("id", tick.get().id().toString())
          .put("pieces", tick.get().pieces())
          .put("short", tick.get().shortPieces())
          .put("reason", tick.get().reason())
          .put("by", tick.get().stamp().by())
          .put("at", tick.get().stamp().client().getEpochSecond() / 60);
    } else {
      json.putNull("ticked");
    }
  }

  private void ticks(Asked asked) throws StoreTrouble {
    JsonNode given = asked.node("ticks");
    if (!given.isArray() || given.size() > MOST_TICKS) {
      throw new BadRequestResponse(
          "\"ticks\" is another thing; expected a list of at most " + MOST_TICKS);
    }
    String plan = floor.shown().map(s -> s.plan().head().number()).orElse("");
    List<Tick> ticks = new ArrayList<>();
    for (JsonNode tick : given) {
      ticks.add(tick(tick, plan, asked));
    }
    desk.store().ticks().add(ticks);
    ObjectNode json = Asked.object();
    ArrayNode taken = json.putArray("taken");
    ticks.forEach(t -> taken.add(t.id().toString()));
    if (!ticks.isEmpty()) {
      desk.tell(new DeskEvent.Ticked(asked.who().name()));
    }
    asked.answer(json);
  }

  private static Tick tick(JsonNode json, String plan, Asked asked) {
    Optional<UUID> undoes =
        json.path("undoes").isTextual() ? Optional.of(uuid(json, "undoes")) : Optional.empty();
    return new Tick(
        uuid(json, "id"),
        text(json, "key"),
        plan,
        pieces(json, "pieces"),
        pieces(json, "short"),
        json.path("reason").asText(""),
        undoes,
        new Tick.Stamp(asked.who().name(), when(json, asked.at()), asked.at()));
  }

  private static UUID uuid(JsonNode json, String name) {
    String text = text(json, name);
    if (!text.matches("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}")) {
      throw new BadRequestResponse("\"" + name + "\" of a tick is no UUID by RFC 9562");
    }
    return UUID.fromString(text);
  }

  private static String text(JsonNode json, String name) {
    JsonNode node = json.path(name);
    if (!node.isTextual() || node.textValue().isEmpty() || node.textValue().length() > 300) {
      throw new BadRequestResponse("\"" + name + "\" of a tick is missing; expected a text");
    }
    return node.textValue();
  }

  private static int pieces(JsonNode json, String name) {
    JsonNode node = json.path(name);
    int pieces = node.isMissingNode() || node.isNull() ? 0 : node.asInt(-1);
    if (pieces < 0 || pieces > MOST_PIECES) {
      throw new BadRequestResponse("\"" + name + "\" of a tick is no number of pieces");
    }
    return pieces;
  }

  /** When it was ticked by the tablet's clock, minutes since 1970; a clock ahead counts as now. */
  private static Instant when(JsonNode json, Instant now) {
    JsonNode at = json.path("at");
    Instant given =
        at.isIntegralNumber() && at.canConvertToInt()
            ? Instant.ofEpochSecond(at.intValue() * 60L)
            : now;
    return given.isAfter(now) || given.isBefore(Instant.EPOCH) ? now : given;
  }

  /** A label of a kit names plan and run, one of a bin the bin or the lot. */
  private void scan(Asked asked) throws StoreTrouble {
    String text = asked.text("text").strip();
    Set<String> words = Arrays.stream(text.split("[\\s|;,]+")).collect(Collectors.toSet());
    ObjectNode json = Asked.object();
    ArrayNode keys = json.putArray("keys");
    Optional<Floor.Shown> shown = floor.shown();
    if (shown.isPresent()) {
      Plan named = new Plan(text, words);
      shown.get().plan().pulls().stream().filter(named::means).forEach(p -> keys.add(key(p)));
    }
    json.put("key", keys.isEmpty() ? "" : keys.get(0).asText());
    json.put("words", keys.isEmpty() ? "no pull has run, bin, lot or part \"" + text + "\"" : "");
    asked.answer(json);
  }

  /** What a label says. */
  private record Plan(String text, Set<String> words) {
    boolean means(Pull pull) {
      boolean run = words.contains(pull.run());
      boolean bin = !pull.bin().isEmpty() && pull.bin().equals(text);
      boolean lot =
          !pull.lot().isEmpty() && (pull.lot().equals(text) || words.contains(pull.lot()));
      return run || bin || lot || pull.insert().equals(text);
    }
  }
}
