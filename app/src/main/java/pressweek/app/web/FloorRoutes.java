package pressweek.app.web;

import static pressweek.app.web.Route.get;
import static pressweek.app.web.Route.post;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.app.desk.Desk;
import pressweek.app.desk.Solving;
import pressweek.app.desk.Standing;
import pressweek.app.plan.Replanner;
import pressweek.app.store.StoreTrouble;
import pressweek.data.files.EventsFile;
import pressweek.data.files.InputError;
import pressweek.data.floor.EventReading;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Hours;
import pressweek.reports.hours.PlantClock;

/** What happened on the floor, and the repair of the week. */
final class FloorRoutes {
  /** How long a repair is searched for; seconds. */
  private static final int SECONDS = 5;

  private static final int MOST_EVENTS = 200;
  private static final List<String> COLUMNS =
      List.of(
          "event",
          "what",
          "line",
          "at",
          "until",
          "count",
          "note",
          "item",
          "quantity",
          "due",
          "needs");

  private static final Set<String> TIMES = Set.of("at", "until", "due");

  private final Desk desk;
  private final Solving solving;

  FloorRoutes(Desk desk, Solving solving) {
    this.desk = desk;
    this.solving = solving;
  }

  List<Route> routes() {
    return List.of(
        get("/api/floor/choices", Right.WEEK, "what can have happened", this::choices),
        post("/api/floor", Right.EDIT, "says what happened and repairs the week", this::happened)
            .asks(
                Field.VERSION,
                Field.whole("now", "the present, minutes since 1970 UTC"),
                Field.of(
                    "events",
                    "array",
                    "what happened, an object of texts each, by the fields of /api/floor/choices")));
  }

  private Plan plan() throws StoreTrouble {
    return desk.standing()
        .map(Standing::week)
        .orElseThrow(() -> new NotFoundResponse("there is no week yet"))
        .plan();
  }

  private void choices(Asked asked) throws StoreTrouble {
    asked.answer(new FloorChoices(plan()).json());
  }

  private void happened(Asked asked) throws StoreTrouble, IOException {
    long version = asked.version();
    Plan plan = plan();
    Hours hours = plan.problem().plant().hours();
    int nowMin = asked.number("now", 0, Integer.MAX_VALUE);
    if (nowMin < hours.startMin() || nowMin >= hours.endMin()) {
      PlantClock clock = PlantClock.of(hours);
      refuse(
          asked,
          List.of(
              clock.moment(nowMin)
                  + " is outside the plan; expected a time from "
                  + clock.moment(hours.startMin())
                  + " to "
                  + clock.moment(hours.endMin())));
      return;
    }
    List<String> wrong = new ArrayList<>();
    Optional<Replanner.Happened> happened = read(asked, plan, nowMin, wrong);
    if (happened.isEmpty()) {
      refuse(asked, wrong);
      return;
    }
    SolveRoutes.begun(asked, solving.repair(version, happened.get(), SECONDS, asked.who().name()));
  }

  private static void refuse(Asked asked, List<String> wrong) {
    ObjectNode json = Asked.object();
    ArrayNode words = json.putArray("words");
    wrong.forEach(words::add);
    asked.context().status(422);
    asked.answer(json);
  }

  private Optional<Replanner.Happened> read(Asked asked, Plan plan, int nowMin, List<String> wrong)
      throws IOException {
    Path file = Files.createTempFile("pressweek-events", ".csv");
    try {
      Files.writeString(file, table(asked.node("events")), StandardCharsets.UTF_8);
      EventsFile.Reading reading = EventsFile.read(file, desk.folder().look().folder());
      EventReading.Result result = EventReading.of(reading.rows(), plan, nowMin);
      List<InputError> findings = new ArrayList<>(reading.findings());
      findings.addAll(result.findings());
      findings.stream()
          .filter(f -> f.severity() == InputError.Severity.ERROR)
          .map(f -> "event " + (f.line() - 1) + ": " + f.message())
          .forEach(wrong::add);
      return wrong.isEmpty()
          ? Optional.of(
              new Replanner.Happened(
                  result.events(),
                  result.rush(),
                  nowMin,
                  Map.of(Replanner.EVENTS_INPUT, reading.sha256())))
          : Optional.empty();
    } finally {
      Files.deleteIfExists(file);
    }
  }

  /** The events as the table that is read everywhere else. */
  private static String table(JsonNode events) {
    if (!events.isArray() || events.isEmpty() || events.size() > MOST_EVENTS) {
      throw new BadRequestResponse(
          "\"events\" is another thing; expected a list of 1 to " + MOST_EVENTS);
    }
    StringBuilder text = new StringBuilder(String.join(",", COLUMNS)).append('\n');
    for (JsonNode event : events) {
      List<String> cells = new ArrayList<>();
      for (String column : COLUMNS) {
        JsonNode cell = event.path(column);
        cells.add(quoted(text(column, cell)));
      }
      text.append(String.join(",", cells)).append('\n');
    }
    return text.toString();
  }

  /** A time may be given in minutes since 1970. */
  private static String text(String column, JsonNode cell) {
    if (TIMES.contains(column) && cell.isIntegralNumber() && cell.canConvertToInt()) {
      return Instant.ofEpochSecond(cell.intValue() * 60L).toString();
    }
    return cell.isValueNode() && !cell.isNull() ? cell.asText() : "";
  }

  /** A cell by RFC 4180. */
  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }
}
