package pressweek.app.offer;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import pressweek.data.plan.Run;
import pressweek.data.problem.Rates;
import pressweek.reports.hours.PlantClock;
import pressweek.solver.offer.Cures;
import pressweek.solver.offer.Help;
import pressweek.solver.offer.Later;
import pressweek.solver.offer.Offer;
import pressweek.solver.offer.Offers;

/** The answer to an inquiry as JSON; money in thousandths of a cent, times as ISO 8601. */
public final class OfferJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Answered answered;
  private final PlantClock clock;

  private OfferJson(Answered answered) {
    this.answered = answered;
    clock = PlantClock.of(answered.standing().problem().plant().hours());
  }

  /** The answer, with a line break at its end. */
  public static String of(Answered answered) {
    return new OfferJson(answered).object().toPrettyString() + "\n";
  }

  private ObjectNode object() {
    Rates rates = answered.standing().problem().plant().rates();
    ObjectNode object = JSON.createObjectNode();
    object.put("item", answered.inquiry().item());
    object.put("plan", answered.standing().head().number());
    object.put("now", clock.iso(clock.startMin()));
    object.put("need", clock.iso(answered.needMin()));
    object.put("currency", rates.shown() ? rates.currency() : "");
    object.put("stopped", answered.cutShort()).put("seconds", answered.seconds());
    object.put("saved_without_it", answered.basis().saves());
    ArrayNode rows = object.putArray("quantities");
    answered.rows().forEach(row -> row(rows.addObject(), row));
    ArrayNode open = object.putArray("not_checked");
    answered.standing().problem().notChecked().forEach(one -> open.add(one.what()));
    return object;
  }

  private void row(ObjectNode object, Answered.Row row) {
    object.put("quantity", row.quantity());
    object.put("tried", row.untried() ? "not" : row.cutShort() ? "cut short" : "to the end");
    if (row.untried()) {
      return;
    }
    object.put("from_stock", row.allFromStock() ? row.quantity() : row.fromStock());
    object.put("in_time", row.inTime(answered.needMin()));
    row.cannot()
        .ifPresent(u -> object.putObject("cannot").put("reason", u.reason()).put("cure", u.cure()));
    row.offers().ifPresent(offers -> offers(object, offers));
    row.cures().ifPresent(cures -> cures(object.putObject("cures"), cures));
  }

  private void cures(ObjectNode object, Cures cures) {
    object.put("changes", cures.changes());
    ArrayNode tried = object.putArray("changes_tried");
    cures.tried().forEach(tried::add);
    object.put("places_tried", cures.places());
    ArrayNode helping = object.putArray("helping");
    for (Help help : cures.helping()) {
      ObjectNode one = helping.addObject();
      one.put("what", help.what()).put("gain", help.gain().name().toLowerCase(Locale.ROOT));
      offer(one, help.offer());
    }
  }

  private void offers(ObjectNode object, Offers offers) {
    offers.unharmed().ifPresent(o -> offer(object.putObject("nobody_late"), o));
    offers.byNeed().ifPresent(o -> offer(object.putObject("by_need"), o));
    offers.soonest().ifPresent(o -> offer(object.putObject("soonest"), o));
    object.put("places_tried", offers.tried()).put("searches", offers.searches());
  }

  private void offer(ObjectNode object, Offer offer) {
    object.put("ready", clock.iso(offer.readyMin()));
    object.put("promise", clock.iso(offer.promisedMin()));
    ArrayNode runs = object.putArray("runs");
    offer.runs().forEach(run -> run(runs.addObject(), run));
    object.put("other_runs_moved", offer.price().moved());
    object.put("costs_more", offer.price().costsMore());
    ObjectNode rules = object.putObject("costs_more_by_rule");
    offer.price().byRule().forEach((rule, amount) -> rules.put(rule.name(), amount));
    ArrayNode later = object.putArray("later");
    offer.price().later().forEach(line -> later(later.addObject(), line));
    ArrayNode placed = object.putArray("finds_place");
    offer.price().placed().forEach(placed::add);
    ArrayNode findings = object.putArray("findings");
    offer.findings().forEach(finding -> findings.add(finding.message()));
  }

  private void run(ObjectNode object, Run run) {
    object.put("press", run.press()).put("mold", run.mold());
    object.put("start", clock.iso(run.startMin())).put("end", clock.iso(run.endMin()));
  }

  private void later(ObjectNode object, Later line) {
    object.put("line", line.line()).put("due", clock.iso(line.dueMin()));
    object.put("was_ready", clock.iso(line.wasMin()));
    line.readyMin().ifPresent(ready -> object.put("ready", clock.iso(ready)));
    line.laterMin().ifPresent(minutes -> object.put("later_min", minutes));
  }
}
