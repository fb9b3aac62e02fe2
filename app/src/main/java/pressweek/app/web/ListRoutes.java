package pressweek.app.web;

import static pressweek.app.web.Route.get;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.store.StoreTrouble;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Cell;
import pressweek.reports.listing.Column;
import pressweek.reports.listing.Listing;

/** The lists of the plan that the floor has, and all its papers. */
final class ListRoutes {
  private final Desk desk;
  private final Floor floor;

  ListRoutes(Desk desk, Floor floor) {
    this.desk = desk;
    this.floor = floor;
  }

  List<Route> routes() {
    return List.of(
        get("/api/lists", Right.LISTS, "the lists that there are", this::names),
        get("/api/lists/{name}", Right.LISTS, "a list", this::list),
        get("/api/papers", Right.LISTS, "the papers that there are", this::papers),
        get("/papers/<name>", Right.LISTS, "a paper, to be kept or printed", this::paper));
  }

  /** Which plan lists and pulls belong to; its number is empty while there is none. */
  static ObjectNode plan(Optional<FloorPlan> shown) {
    return Asked.object()
        .put("number", shown.map(FloorPlan::number).orElse(""))
        .put("replaces", shown.map(FloorPlan::replaces).orElse(""))
        .put("draft", shown.map(FloorPlan::draft).orElse(false));
  }

  private void names(Asked asked) throws StoreTrouble {
    ArrayNode json = Asked.JSON.createArrayNode();
    floor
        .shown()
        .map(FloorPlan::lists)
        .orElse(List.of())
        .forEach(l -> json.addObject().put("name", l.name()).put("title", l.title()));
    asked.answer(json);
  }

  private void list(Asked asked) throws StoreTrouble {
    String name = asked.context().pathParam("name");
    FloorPlan plan = floor.shown().orElseThrow(() -> new NotFoundResponse(Floor.NO_PLAN));
    Listing list =
        plan.lists().stream()
            .filter(l -> l.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new NotFoundResponse("there is no such list"));
    ObjectNode json = Asked.object().put("name", list.name()).put("title", list.title());
    json.put("caution", list.paper().caution()).put("whenEmpty", list.paper().whenEmpty());
    json.put("paper", Papers.sheetOf(list)).set("plan", plan(Optional.of(plan)));
    json.put("zone", plan.book().clock().zone().getId()).put("now", desk.nowMin());
    ArrayNode columns = json.putArray("columns");
    for (Column column : list.columns()) {
      columns
          .addObject()
          .put("name", column.name())
          .put("heading", column.heading())
          .put("kind", column.kind().name().toLowerCase(Locale.ROOT));
    }
    ArrayNode rows = json.putArray("rows");
    for (List<Cell> row : list.rows()) {
      ArrayNode cells = rows.addArray();
      row.forEach(c -> cell(cells, c));
    }
    asked.answer(json);
  }

  private static void cell(ArrayNode cells, Cell cell) {
    if (cell instanceof Cell.Text text) {
      cells.add(text.text());
    } else if (cell instanceof Cell.Texts texts) {
      texts.texts().forEach(cells.addArray()::add);
    } else if (cell instanceof Cell.Number number) {
      cells.add(number.value());
    } else if (cell instanceof Cell.Time time) {
      cells.add(PlantClock.minute(time.at()));
    }
  }

  private void papers(Asked asked) throws StoreTrouble {
    ArrayNode json = Asked.JSON.createArrayNode();
    Optional<FloorPlan> plan = floor.shown();
    if (plan.isPresent()) {
      for (Map.Entry<String, byte[]> paper : plan.get().papers().entrySet()) {
        json.addObject()
            .put("name", paper.getKey())
            .put("title", Papers.title(paper.getKey(), plan.get().lists()))
            .put("bytes", paper.getValue().length);
      }
    }
    asked.answer(json);
  }

  private void paper(Asked asked) throws StoreTrouble {
    String name = asked.context().pathParam("name");
    FloorPlan plan = floor.shown().orElseThrow(() -> new NotFoundResponse(Floor.NO_PLAN));
    byte[] bytes =
        Optional.ofNullable(plan.papers().get(name))
            .orElseThrow(() -> new NotFoundResponse("there is no such paper"));
    Documents.send(asked, name, bytes);
  }
}
