package pressweek.app.web;

import static pressweek.app.web.Route.get;
import static pressweek.app.web.Route.post;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.BadRequestResponse;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.desk.Edit;
import pressweek.app.desk.Solving;
import pressweek.app.desk.Standing;
import pressweek.app.desk.Taken;
import pressweek.app.store.StoreTrouble;
import pressweek.data.files.InputError;
import pressweek.solver.why.Placement;

/** The week: looked at, tried, changed. */
final class WeekRoutes {
  private static final Field LINE = Field.text("line", "the order line, as 52103/2");
  private static final Field PRESS = Field.text("press", "a press");
  private static final Field PLACE =
      Field.whole("place", "how many lines that may move stand before it");
  private static final int MOST_PLACES = 40;
  private static final int MOST_PLACE = 100_000;
  private static final int MOST_PIECES = 100_000_000;

  private final Desk desk;
  private final Solving solving;
  private final TrialJson trials = new TrialJson();

  WeekRoutes(Desk desk, Solving solving) {
    this.desk = desk;
    this.solving = solving;
  }

  List<Route> routes() {
    return List.of(
        get("/api/week", Right.WEEK, "the week as it stands", a -> answer(a, desk.standing())),
        post("/api/week/trial", Right.EDIT, "what a move would do", this::trial)
            .asks(Field.VERSION, LINE, PRESS, PLACE),
        get("/api/week/places", Right.WEEK, "places of a line with prices", this::places)
            .asks(LINE.inQuery()),
        get("/api/week/room", Right.WEEK, "what could run in an empty place", this::room)
            .asks(PRESS.inQuery(), Field.whole("at", "minutes since 1970 UTC").inQuery()),
        post("/api/week/edits", Right.EDIT, "changes a line of the week", this::edit)
            .asks(
                Field.VERSION,
                LINE,
                Field.text(
                    "kind",
                    "move, promise, let-go, hold, release, leave-out, take-in, split or join"),
                PRESS.unneeded(),
                PLACE.unneeded(),
                Field.whole("pieces", "of a split: pieces of the second part").unneeded(),
                Field.WHY),
        change("undo", "takes the last change back", a -> desk.undo(a.version(), a.change())),
        change("redo", "makes it again", a -> desk.redo(a.version(), a.change())),
        change(
            "give-out",
            "gives the plan out to the floor",
            a -> desk.giveOut(a.version(), a.change())),
        change(
            "read-files",
            "takes the files of the folder as they are",
            a -> desk.takeFiles(a.version(), a.change())));
  }

  /** A change of the whole week. */
  private interface WeekChange {
    Taken of(Asked asked) throws StoreTrouble, IOException;
  }

  private Route change(String name, String does, WeekChange work) {
    return post("/api/week/" + name, Right.EDIT, does, a -> take(a, work.of(a)))
        .asks(Field.VERSION, Field.WHY);
  }

  /** Answers with a week that was changed, or why it was not. */
  void take(Asked asked, Taken taken) throws StoreTrouble, IOException {
    if (taken instanceof Taken.Done done) {
      answer(asked, Optional.of(done.standing()));
    } else if (taken instanceof Taken.Stale stale) {
      asked.context().status(409);
      asked.answer(
          Asked.object()
              .put(
                  "words",
                  stale.by() + " was first: " + stale.what() + "; look at it and try again")
              .put("version", stale.version())
              .put("by", stale.by())
              .put("what", stale.what())
              .put("at", stale.at().getEpochSecond() / 60));
    } else if (taken instanceof Taken.Refused refused) {
      asked.refuse(422, refused.why());
    }
  }

  void answer(Asked asked, Optional<Standing> standing) throws StoreTrouble, IOException {
    if (standing.isEmpty()) {
      ObjectNode none = Asked.object().put("version", 0).put("words", "there is no week yet");
      ArrayNode errors = none.putArray("errors");
      desk.folder().look().week().errors().stream().map(InputError::toString).forEach(errors::add);
      asked.context().status(404);
      asked.answer(none);
      return;
    }
    Standing now = standing.get();
    WeekJson json = new WeekJson(now.week().plan(), now.week().marks());
    ObjectNode week = Asked.object().put("version", now.version());
    head(week.putObject("plan"), now);
    json.whole(week);
    week.put("now", desk.nowMin());
    json.plant(week);
    json.work(week);
    week.put("undo", now.state().undo().orElse("")).put("redo", now.state().redo().orElse(""));
    now.findings().forEach(week.putArray("findings")::add);
    desk.filesChanged(now).forEach(week.putArray("filesChanged")::add);
    ObjectNode going = week.putObject("solving");
    going.put("on", solving.going().isPresent());
    solving.going().ifPresent(g -> going.put("by", g.by()).put("seconds", g.seconds()));
    week.put("proposal", solving.proposal().isPresent());
    asked.answer(week);
  }

  private static void head(ObjectNode plan, Standing now) {
    plan.put("number", now.week().plan().head().number());
    plan.put("replaces", now.week().plan().head().replaces());
    plan.put("made", now.state().made().at().getEpochSecond() / 60);
    plan.put("by", now.state().made().by()).put("what", now.state().what());
    plan.put("givenOut", now.givenOut());
  }

  private Edit.Move move(Asked asked) {
    return new Edit.Move(
        asked.text("line"), asked.text("press"), asked.number("place", 0, MOST_PLACE));
  }

  private void trial(Asked asked) throws StoreTrouble {
    Desk.TrialAnswer answer = desk.tried(asked.version(), move(asked));
    if (answer instanceof Desk.TrialAnswer.Old old) {
      asked.context().status(409);
      asked.answer(
          Asked.object().put("words", "the week is another by now").put("version", old.version()));
    } else if (answer instanceof Desk.TrialAnswer.No no) {
      asked.answer(Asked.object().put("possible", false).put("words", no.why()));
    } else if (answer instanceof Desk.TrialAnswer.Yes yes) {
      asked.answer(trials.of(yes.trial()));
    }
  }

  private void places(Asked asked) throws StoreTrouble {
    String line = asked.query("line");
    ObjectNode json = Asked.object().put("version", version());
    ArrayNode places = json.putArray("places");
    desk.asked(hands -> hands.order().places(line, MOST_PLACES))
        .ifPresent(all -> all.forEach(p -> place(places.addObject(), p)));
    asked.answer(json);
  }

  private long version() throws StoreTrouble {
    return desk.standing().map(Standing::version).orElse(0L);
  }

  private static void place(ObjectNode json, Placement place) {
    json.put("press", place.press()).put("mold", place.mold()).put("place", place.spot());
    json.put("seq", place.place()).put("after", place.after()).put("start", place.startMin());
    json.put("lateMin", place.lateMin()).put("costsMore", place.costsMore());
    json.put(
        "words",
        "on " + place.press() + (place.after().isEmpty() ? ", first" : " after " + place.after()));
  }

  private void room(Asked asked) throws StoreTrouble {
    String press = asked.query("press");
    int at = (int) asked.queryNumber("at", 0, Integer.MAX_VALUE);
    ObjectNode json = Asked.object().put("version", version());
    ArrayNode lines = json.putArray("lines");
    desk.asked(hands -> hands.order().room(press, at, MOST_PLACES))
        .ifPresent(
            all ->
                all.forEach(
                    f -> {
                      ObjectNode line = lines.addObject().put("line", f.line());
                      place(line, f.there());
                    }));
    asked.answer(json);
  }

  private void edit(Asked asked) throws StoreTrouble, IOException {
    take(asked, desk.edit(asked.version(), asEdit(asked), asked.change()));
  }

  private Edit asEdit(Asked asked) {
    String line = asked.text("line");
    return switch (asked.text("kind")) {
      case "move" -> move(asked);
      case "promise" -> new Edit.Promise(line);
      case "let-go" -> new Edit.LetGo(line);
      case "hold" -> new Edit.Hold(line);
      case "release" -> new Edit.Release(line);
      case "leave-out" -> new Edit.LeaveOut(line, asked.optional("why").orElse(""));
      case "take-in" -> new Edit.TakeIn(line);
      case "split" -> new Edit.Split(line, asked.number("pieces", 1, MOST_PIECES));
      case "join" -> new Edit.Join(line);
      default ->
          throw new BadRequestResponse(
              "\"kind\" is another thing; expected move, promise, let-go, hold, release, leave-out, take-in, split or join");
    };
  }
}
