package pressweek.app.web;

import static pressweek.app.web.Route.get;
import static pressweek.app.web.Route.post;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import pressweek.app.compare.Comparison;
import pressweek.app.desk.Comparing;
import pressweek.app.desk.ScenarioShelf;
import pressweek.app.desk.Shelved;
import pressweek.app.desk.Turn;
import pressweek.app.store.StoreTrouble;
import pressweek.data.files.InputError;

/** Comparisons of scenarios, and what came of the last one. */
final class CompareRoutes {
  static final int MOST = 5;
  static final int MOST_SEEDS = 20;
  static final int MOST_SECONDS = 600;

  /** The longest comparison; seconds. */
  static final int MOST_TOTAL = 14_400;

  /** What a person looks at first, in this order. */
  private static final List<Titled> TITLED =
      List.of(
          new Titled("compare.html", "The whole comparison, with pictures"),
          new Titled("meeting.html", "One sheet for a meeting, to print"),
          new Titled("compare.xlsx", "All figures as a workbook"),
          new Titled("compare.csv", "The table as CSV"));

  private record Titled(String name, String title) {}

  private final Comparing comparing;
  private final ScenarioShelf shelf;

  CompareRoutes(Comparing comparing, ScenarioShelf shelf) {
    this.comparing = comparing;
    this.shelf = shelf;
  }

  List<Route> routes() {
    return List.of(
        get("/api/compared", Right.SCENARIOS, "the last comparison of scenarios", this::last),
        get(
            "/api/compared/going",
            Right.SCENARIOS,
            "how far the comparison is that goes on, and what else is searched for",
            this::going),
        post("/api/compared", Right.COMPARE, "begins to compare scenarios", this::begin)
            .asks(
                Field.of("scenarios", Field.TEXTS, "ids, as /api/scenarios names them"),
                Field.whole("seeds", "plans of each"),
                Field.whole("seconds", "how long each plan is searched for")),
        post("/api/compared/stop", Right.COMPARE, "ends the comparison soon", this::stop),
        get("/compared/<name>", Right.SCENARIOS, "a paper of the last comparison", this::paper));
  }

  private void begin(Asked asked) throws StoreTrouble, IOException {
    List<String> ids = List.copyOf(new LinkedHashSet<>(asked.texts("scenarios", MOST)));
    int seeds = asked.number("seeds", 1, MOST_SEEDS);
    int seconds = asked.number("seconds", 1, MOST_SECONDS);
    List<Shelved> chosen = new ArrayList<>();
    for (String id : ids) {
      chosen.add(shelf.find(id).orElseThrow(() -> unknown(id)));
    }
    Comparing.Wanted wanted = new Comparing.Wanted(chosen, seeds, seconds);
    if (wanted.total() > MOST_TOTAL) {
      asked.refuse(
          422,
          "%,d plans of %,d s take %,d min; expected at most %,d min"
              .formatted(wanted.plans(), seconds, wanted.total() / 60, MOST_TOTAL / 60));
      return;
    }
    List<String> faults = faults(chosen);
    Optional<Comparing.Refused> refused =
        faults.isEmpty()
            ? comparing.begin(wanted, asked.change())
            : Optional.of(new Comparing.Refused(false, faults));
    if (refused.isPresent()) {
      asked.refuse(refused.get().later() ? 409 : 422, String.join("\n", refused.get().words()));
    } else {
      asked.answer(Asked.object().put("plans", wanted.plans()).put("seconds", wanted.total()));
    }
  }

  private static BadRequestResponse unknown(String id) {
    String seen = id.length() <= 100 ? id : id.substring(0, 100) + " ...";
    return new BadRequestResponse(
        "there is no scenario \"" + seen + "\"; expected ids as /api/scenarios names them");
  }

  private static List<String> faults(List<Shelved> chosen) {
    return chosen.stream()
        .filter(s -> !s.sound())
        .flatMap(s -> s.findings().stream())
        .map(InputError::toString)
        .toList();
  }

  private void stop(Asked asked) {
    comparing.stop();
    asked.answer(Asked.object());
  }

  private void going(Asked asked) {
    ObjectNode json = Asked.object().put("trouble", comparing.trouble());
    Optional<Turn.Going> own = comparing.going();
    Optional<Turn.Going> other = comparing.other();
    json.put("on", own.isPresent()).put("busy", other.map(Turn.Going::words).orElse(""));
    if (own.isPresent()) {
      Comparing.Progress progress = comparing.progress();
      json.put("by", own.get().by()).put("done", progress.done()).put("of", progress.of());
      json.put("left", progress.left());
    }
    asked.answer(json);
  }

  private void last(Asked asked) throws StoreTrouble, IOException {
    Optional<Comparison> last = comparing.last();
    ObjectNode json = Asked.object().put("there", last.isPresent());
    if (last.isPresent()) {
      json.put("kept", comparing.isKept()).set("about", last.get().about());
      comparing.since().forEach(json.putArray("since")::add);
      ArrayNode papers = json.putArray("papers");
      TITLED.stream()
          .filter(t -> last.get().papers().containsKey(t.name()))
          .forEach(t -> papers.addObject().put("name", t.name()).put("title", t.title()));
    }
    asked.answer(json);
  }

  private void paper(Asked asked) {
    String name = asked.context().pathParam("name");
    Optional<byte[]> paper = comparing.last().map(Comparison::papers).map(p -> p.get(name));
    Documents.send(
        asked,
        name,
        paper.orElseThrow(() -> new NotFoundResponse("there is no such paper of a comparison")));
  }
}
