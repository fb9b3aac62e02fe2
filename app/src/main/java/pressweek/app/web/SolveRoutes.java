package pressweek.app.web;

import static pressweek.app.web.Route.get;
import static pressweek.app.web.Route.post;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.desk.Proposal;
import pressweek.app.desk.Solving;
import pressweek.app.store.StoreTrouble;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.moves.Move;
import pressweek.reports.moves.MovesReport;
import pressweek.reports.schedule.Headline;

/** Searches beside the week that stands, and what they propose. */
final class SolveRoutes {
  private static final int LONGEST = 3_600;

  private final Desk desk;
  private final Solving solving;
  private final WeekRoutes week;

  SolveRoutes(Desk desk, Solving solving) {
    this.desk = desk;
    this.solving = solving;
    week = new WeekRoutes(desk, solving);
  }

  List<Route> routes() {
    return List.of(
        post("/api/week/solve", Right.EDIT, "begins to solve the week anew", this::solve)
            .asks(Field.VERSION, Field.whole("seconds", "how long to search")),
        post("/api/week/solve/stop", Right.EDIT, "ends the search soon", this::stop),
        get("/api/week/proposal", Right.WEEK, "what the search proposes", this::proposal),
        post("/api/week/proposal/take", Right.EDIT, "makes the proposal the week", this::take)
            .asks(Field.VERSION, Field.WHY),
        post("/api/week/proposal/leave", Right.EDIT, "keeps the week as it is", this::leave));
  }

  private void solve(Asked asked) throws StoreTrouble {
    int seconds = asked.number("seconds", 1, LONGEST);
    begun(asked, solving.solve(asked.version(), seconds, asked.who().name()));
  }

  /** Answers that a search has begun, or why not. */
  static void begun(Asked asked, Optional<String> refused) {
    if (refused.isPresent()) {
      asked.refuse(409, refused.get());
    } else {
      asked.answer(Asked.object());
    }
  }

  private void stop(Asked asked) {
    solving.stop();
    asked.answer(Asked.object());
  }

  private void take(Asked asked) throws StoreTrouble, IOException {
    week.take(asked, solving.take(asked.version(), asked.change()));
  }

  private void leave(Asked asked) throws StoreTrouble, IOException {
    solving.leave();
    week.answer(asked, desk.standing());
  }

  private void proposal(Asked asked) {
    Proposal found =
        solving.proposal().orElseThrow(() -> new NotFoundResponse("there is no proposal"));
    Plan before = found.moves().unchanged();
    Plan plan = found.week().plan();
    ObjectNode json = Asked.object().put("version", found.version()).put("by", found.by());
    json.put("from", found.from().name().toLowerCase(java.util.Locale.ROOT));
    json.put("sentence", String.join(" ", Headline.figures(plan)));
    json.put("costBefore", before.figures().avoidableCost());
    json.put("costAfter", plan.figures().avoidableCost());
    json.put("lateBefore", before.figures().lateLines());
    json.put("lateAfter", plan.figures().lateLines());
    json.put("unplacedBefore", before.figures().unplacedLines());
    json.put("unplacedAfter", plan.figures().unplacedLines());
    found.moves().notes().forEach(json.putArray("notes")::add);
    found.findings().forEach(json.putArray("findings")::add);
    ArrayNode moves = json.putArray("moves");
    PlantClock clock = PlantClock.of(plan.problem().plant().hours());
    MovesReport.of(found.moves()).forEach(m -> move(moves.addObject(), m, clock));
    WeekJson wall = new WeekJson(plan, found.week().marks());
    wall.whole(json);
    wall.plant(json);
    wall.work(json);
    asked.answer(json);
  }

  private static void move(ObjectNode json, Move move, PlantClock clock) {
    json.put("line", move.line()).put("item", move.item());
    json.put("what", move.kind().name().toLowerCase(java.util.Locale.ROOT));
    String before = move.before().map(r -> place(r, clock)).orElse("");
    String now = move.now().map(r -> place(r, clock)).orElse("");
    String arrow = before.isEmpty() || now.isEmpty() ? "" : " to ";
    json.put("words", before + arrow + now);
    json.put("reason", move.reason()).put("costsMore", move.cost());
  }

  /** {@code H4 Tue 10:00}. */
  private static String place(Run run, PlantClock clock) {
    return run.press() + " " + clock.moment(run.startMin());
  }
}
