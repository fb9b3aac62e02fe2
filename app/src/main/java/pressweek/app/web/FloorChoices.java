package pressweek.app.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;

/**
 * The forms for what can have happened on the floor: a form an event, with what it can be about.
 */
final class FloorChoices {
  private final Plan plan;
  private final ObjectNode json = Asked.object();
  private final ArrayNode events = json.putArray("events");

  FloorChoices(Plan plan) {
    this.plan = plan;
  }

  ObjectNode json() {
    List<String> presses = plan.problem().floor().presses().stream().map(Press::id).toList();
    List<String> molds = plan.problem().floor().molds().stream().map(Mold::id).toList();
    away("press-away", "a press is away", "press", presses);
    away("mold-away", "a mold is away", "mold", molds);
    away("person-away", "people are away", "person", people());
    number(json("person-away"), "count", "how many", false);
    line("finished", "a run has ended, sooner or later than planned", lines(true), true);
    number(
        line("count-short", "a run has made too few", lines(true), true),
        "count",
        "good pieces made",
        true);
    lot();
    rush();
    line("dropped", "a line is no longer wanted", lines(false), false);
    line("on-hold", "a line must wait", lines(false), false);
    return json;
  }

  private ObjectNode json(String event) {
    for (int i = 0; i < events.size(); i++) {
      if (events.get(i).path("event").asText().equals(event)) {
        return (ObjectNode) events.get(i);
      }
    }
    throw new IllegalArgumentException(event);
  }

  private ObjectNode event(String event, String words) {
    ObjectNode form = events.addObject().put("event", event).put("words", words);
    form.putArray("fields");
    return form;
  }

  private static ObjectNode field(
      ObjectNode form, String name, String words, String kind, boolean required) {
    return ((ArrayNode) form.get("fields"))
        .addObject()
        .put("name", name)
        .put("words", words)
        .put("kind", kind)
        .put("required", required);
  }

  private static void choose(ObjectNode form, String kind, String words, List<String> choices) {
    ArrayNode all = field(form, "what", words, kind, true).putArray("choices");
    choices.forEach(all::add);
  }

  private void away(String event, String words, String kind, List<String> choices) {
    ObjectNode form = event(event, words);
    choose(form, kind, "which", choices);
    field(form, "at", "from", "time", true);
    field(form, "until", "until (empty: the end of the week)", "time", false);
    note(form);
  }

  private ObjectNode line(String event, String words, List<String> lines, boolean timed) {
    ObjectNode form = event(event, words);
    choose(form, "line", "which line", lines);
    if (timed) {
      field(form, "at", "when", "time", true);
    }
    note(form);
    return form;
  }

  private static void number(ObjectNode form, String name, String words, boolean required) {
    field(form, name, words, "number", required);
  }

  private static void note(ObjectNode form) {
    field(form, "note", "in words", "text", false);
  }

  private void lot() {
    ObjectNode form = event("lot-held", "a lot is on hold");
    List<String> lots =
        plan.problem().materials().stock().lots().stream().map(Lot::id).distinct().toList();
    choose(form, "lot", "which lot", lots);
    note(form);
  }

  private void rush() {
    ObjectNode form = event("rush", "a rush order has come");
    field(form, "what", "order", "text", true);
    field(form, "line", "line of the order", "text", false);
    field(form, "item", "item code or words", "item", true);
    field(form, "quantity", "pieces", "number", true);
    field(form, "due", "due", "time", true);
    field(form, "needs", "needs, such as food", "text", false);
    note(form);
  }

  private List<String> people() {
    List<String> people = new ArrayList<>(List.of("setter", "operator"));
    plan.problem().plant().crew().people().ifPresent(all -> all.forEach(p -> people.add(p.name())));
    return people;
  }

  private List<String> lines(boolean withRun) {
    TreeSet<String> lines = new TreeSet<>(plan.runs().stream().map(Run::job).toList());
    if (!withRun) {
      plan.problem().jobs().stream().map(Job::id).forEach(lines::add);
    }
    return List.copyOf(lines);
  }
}
