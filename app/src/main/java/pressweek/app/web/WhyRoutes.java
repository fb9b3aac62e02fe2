package pressweek.app.web;

import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.desk.Standing;
import pressweek.app.plan.WhyJson;
import pressweek.app.store.StoreTrouble;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.solver.why.Why;

/** Why a line is where it is. */
final class WhyRoutes {
  /** How long cures are searched for; seconds. */
  private static final int SECONDS = 5;

  private final Desk desk;

  private static final Field LINE = Field.text("line", "the order line, as 52103/2").inQuery();

  WhyRoutes(Desk desk) {
    this.desk = desk;
  }

  List<Route> routes() {
    return List.of(
        Route.get("/api/why", Right.WEEK, "why a line is where it is", a -> why(a, false))
            .asks(LINE),
        Route.get("/api/why/cures", Right.EDIT, "what would help a line", a -> why(a, true))
            .asks(LINE));
  }

  private void why(Asked asked, boolean cures) throws StoreTrouble {
    String line = asked.query("line");
    Optional<Plan> plan = desk.standing().map(Standing::week).map(w -> w.plan());
    Why why = new Why(plan.orElseThrow(WhyRoutes::none), new Settings(SECONDS, 0, 1));
    if (!why.lines(line).equals(List.of(line))) {
      throw none();
    }
    asked
        .context()
        .contentType("application/json")
        .result(WhyJson.line(plan.get(), cures ? why.of(line) : why.atOnce(line)));
  }

  private static NotFoundResponse none() {
    return new NotFoundResponse("there is no such line in the week");
  }
}
