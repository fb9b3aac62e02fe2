package pressweek.app.web;

import static pressweek.app.web.Route.get;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.store.StoreTrouble;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Cell;
import pressweek.reports.listing.Column;
import pressweek.reports.listing.Listing;
import pressweek.reports.write.PlanLists;

/** The lists of the plan that the floor has, and all its papers. */
final class ListRoutes {
  private final Desk desk;
  private final Floor floor;

  ListRoutes(Desk desk) {
    this.desk = desk;
    floor = new Floor(desk);
  }

  List<Route> routes() {
    return List.of(
        get("/api/lists", Right.LISTS, "the lists that there are", this::names),
        get("/api/lists/{name}", Right.LISTS, "a list", this::list),
        get("/api/papers", Right.LISTS, "the papers that there are", this::papers),
        get("/papers/<name>", Right.LISTS, "a paper, to be kept or printed", this::paper));
  }

  private List<Listing> lists() throws StoreTrouble {
    return floor.shown().map(s -> PlanLists.of(s.edition(desk.nowMin()))).orElse(List.of());
  }

  private void names(Asked asked) throws StoreTrouble {
    ArrayNode json = Asked.JSON.createArrayNode();
    lists().forEach(l -> json.addObject().put("name", l.name()).put("title", l.title()));
    asked.answer(json);
  }

  private void list(Asked asked) throws StoreTrouble {
    String name = asked.context().pathParam("name");
    Listing list =
        lists().stream()
            .filter(l -> l.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new NotFoundResponse("there is no such list"));
    ObjectNode json = Asked.object().put("name", list.name()).put("title", list.title());
    Optional<Floor.Shown> shown = floor.shown();
    json.put("plan", shown.map(s -> s.plan().head().number()).orElse(""));
    json.put("draft", shown.map(Floor.Shown::draft).orElse(false));
    shown.ifPresent(s -> json.put("zone", s.plan().problem().plant().hours().zone().getId()));
    ArrayNode columns = json.putArray("columns");
    for (Column column : list.columns()) {
      columns
          .addObject()
          .put("name", column.name())
          .put("heading", column.heading())
          .put("kind", column.kind().name().toLowerCase(java.util.Locale.ROOT));
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
      cells.add(String.join(", ", texts.texts()));
    } else if (cell instanceof Cell.Number number) {
      cells.add(number.value());
    } else if (cell instanceof Cell.Time time) {
      cells.add(PlantClock.minute(time.at()));
    }
  }

  private void papers(Asked asked) throws StoreTrouble {
    ArrayNode json = Asked.JSON.createArrayNode();
    for (String name : floor.names()) {
      json.addObject().put("name", name).put("href", "/papers/" + name);
    }
    asked.answer(json);
  }

  private void paper(Asked asked) throws StoreTrouble {
    String name = asked.context().pathParam("name");
    Map<String, byte[]> files = floor.files();
    byte[] bytes =
        Optional.ofNullable(files.get(name))
            .orElseThrow(() -> new NotFoundResponse("there is no such paper"));
    Documents.send(asked, name, bytes);
  }
}
