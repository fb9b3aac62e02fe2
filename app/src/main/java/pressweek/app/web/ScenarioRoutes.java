package pressweek.app.web;

import static pressweek.app.web.Route.get;
import static pressweek.app.web.Route.post;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.util.List;
import pressweek.app.compare.Effort;
import pressweek.app.desk.ScenarioShelf;
import pressweek.app.desk.Shelved;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Scenario;

/** The scenarios that there are, and new ones. */
final class ScenarioRoutes {
  private static final Field NAME =
      Field.text("name", "the kept scenario that was edited; empty for a new one");
  private static final Field TEXT = Field.text("text", "the scenario, JSON");
  private static final Field VERSION =
      Field.whole("version", "the version of the scenario that the caller saw; 0 for a new one");

  private final ScenarioShelf shelf;

  ScenarioRoutes(ScenarioShelf shelf) {
    this.shelf = shelf;
  }

  List<Route> routes() {
    return List.of(
        get("/api/scenarios", Right.SCENARIOS, "the scenarios that there are", this::all),
        get("/api/scenarios/text", Right.SCENARIOS, "a scenario as JSON", this::text)
            .asks(Field.text("id", "the scenario, as /api/scenarios names it").inQuery()),
        post(
                "/api/scenarios/check",
                Right.COMPARE,
                "what is wrong with a text on top of the folder",
                this::check)
            .asks(TEXT),
        post("/api/scenarios/keep", Right.COMPARE, "keeps a text under its own name", this::keep)
            .asks(TEXT, NAME.unneeded(), VERSION, Field.WHY),
        post("/api/scenarios/drop", Right.COMPARE, "drops a kept scenario", this::drop)
            .asks(Field.text("name", "the kept scenario"), VERSION, Field.WHY));
  }

  private void all(Asked asked) throws StoreTrouble, IOException {
    ObjectNode json = Asked.object();
    ArrayNode rows = json.putArray("scenarios");
    for (Shelved one : shelf.all()) {
      rows.add(row(one));
    }
    ObjectNode usual = json.putObject("usual");
    usual.put("seeds", Effort.SEEDS).put("seconds", Effort.SECONDS);
    ObjectNode most = json.putObject("most").put("scenarios", CompareRoutes.MOST);
    most.put("seeds", CompareRoutes.MOST_SEEDS).put("seconds", CompareRoutes.MOST_SECONDS);
    most.put("total", CompareRoutes.MOST_TOTAL);
    asked.answer(json);
  }

  private static ObjectNode row(Shelved one) {
    ObjectNode json = Asked.object().put("id", one.id()).put("name", one.name());
    json.put("file", one.scenario().file()).put("words", one.scenario().words());
    json.put("sound", one.sound());
    json.set("findings", ScenarioFindings.of(one));
    one.kept()
        .ifPresent(
            k ->
                json.putObject("kept")
                    .put("version", k.version())
                    .put("by", k.made().by())
                    .put("at", Math.floorDiv(k.made().at().getEpochSecond(), 60L))
                    .put("why", k.made().why()));
    return json;
  }

  private void text(Asked asked) throws StoreTrouble, IOException {
    String id = asked.query("id");
    Shelved one =
        shelf.find(id).orElseThrow(() -> new NotFoundResponse("there is no such scenario"));
    asked.answer(row(one).put("text", one.text()));
  }

  private void check(Asked asked) throws IOException {
    asked.answer(row(shelf.read(asked.longText("text", ScenarioShelf.MOST_LETTERS))));
  }

  private void keep(Asked asked) throws StoreTrouble, IOException {
    String name = asked.optional("name").orElse("");
    Shelved text = shelf.read(asked.longText("text", ScenarioShelf.MOST_LETTERS));
    long version = asked.version();
    if (!text.sound()) {
      ObjectNode json = row(text);
      json.put("words", "Nothing was kept: the scenario has faults.");
      asked.context().status(422);
      asked.answer(json);
      return;
    }
    String own = text.scenario().name();
    String person = asked.who().name();
    // Under another name it is another scenario, and must not take the place of one that is there.
    Answer<Scenario> answer = shelf.keep(text, own.equals(name) ? version : 0, asked.change());
    if (answer instanceof Answer.Done<Scenario> done) {
      asked.answer(row(shelf.find(idOf(done.value())).orElse(text)));
    } else {
      missed(asked, answer, own, person);
    }
  }

  private static String idOf(Scenario kept) {
    return "kept:" + kept.name();
  }

  private void drop(Asked asked) throws StoreTrouble {
    String name = asked.text("name");
    Answer<Scenario> answer = shelf.drop(name, asked.version(), asked.change());
    if (answer instanceof Answer.Done<Scenario>) {
      asked.answer(Asked.object());
    } else {
      missed(asked, answer, name, asked.who().name());
    }
  }

  private static void missed(Asked asked, Answer<Scenario> answer, String name, String person) {
    if (answer instanceof Answer.Stale<Scenario> stale) {
      String who = stale.by().equals(person) ? "you have" : stale.by() + " has";
      asked.context().status(409);
      asked.answer(
          Asked.object()
              .put("version", stale.version())
              .put("by", stale.by())
              .put("at", Math.floorDiv(stale.at().getEpochSecond(), 60L))
              .put(
                  "words",
                  "Nothing was changed: %s written \"%s\" meanwhile, version %d; look at that first, or take another name"
                      .formatted(who, name, stale.version())));
    } else {
      asked.refuse(409, "Nothing was changed: \"" + name + "\" is gone by now");
    }
  }
}
