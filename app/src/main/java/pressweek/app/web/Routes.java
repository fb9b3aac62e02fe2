package pressweek.app.web;

import java.util.ArrayList;
import java.util.List;
import pressweek.app.desk.Comparing;
import pressweek.app.desk.Desk;
import pressweek.app.desk.ScenarioShelf;
import pressweek.app.desk.Solving;

/** Every route of the server. */
final class Routes {
  private Routes() {}

  static List<Route> all(Desk desk, Solving solving, Listening listening) {
    List<Route> all = new ArrayList<>(Pages.routes());
    all.addAll(new UserRoutes(desk, listening).routes());
    all.addAll(new WeekRoutes(desk, solving).routes());
    all.addAll(new WhyRoutes(desk).routes());
    all.addAll(new SolveRoutes(desk, solving).routes());
    all.addAll(new FloorRoutes(desk, solving).routes());
    Floor floor = new Floor(desk);
    all.addAll(new PullRoutes(desk, floor).routes());
    all.addAll(new ShortRoutes(desk, floor).routes());
    all.addAll(new ListRoutes(desk, floor).routes());
    all.addAll(new CodeRoutes(desk).routes());
    all.addAll(new FigureRoutes(desk).routes());
    ScenarioShelf shelf = new ScenarioShelf(desk);
    Comparing comparing = new Comparing(desk, solving.turn(), shelf);
    all.addAll(new ScenarioRoutes(shelf).routes());
    all.addAll(new CompareRoutes(comparing, shelf).routes());
    all.addAll(new FileRoutes(desk).routes());
    List<Route> described = List.copyOf(all);
    all.add(
        Route.get(
            "/api/openapi.json",
            Right.KNOWN,
            "this description",
            asked -> asked.answer(OpenApi.of(described))));
    return List.copyOf(all);
  }
}
