package pressweek.app.plan;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.reports.hours.PlantClock;
import pressweek.solver.why.Cure;
import pressweek.solver.why.Explanation;
import pressweek.solver.why.Placement;
import pressweek.solver.why.Stretch;

/** An explanation as one line of JSON; money in thousandths of a cent, times as ISO 8601. */
public final class WhyJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final PlantClock clock;

  private WhyJson(PlantClock clock) {
    this.clock = clock;
  }

  /** The explanation of a line of a plan. */
  public static String line(Plan plan, Explanation why) {
    PlantClock clock = PlantClock.of(plan.problem().plant().hours());
    return new WhyJson(clock).object(plan, why).toString();
  }

  private ObjectNode object(Plan plan, Explanation why) {
    ObjectNode object = JSON.createObjectNode();
    object.put("plan", plan.head().number());
    object.put("line", why.line());
    why.job().ifPresent(job -> object.put("due", clock.iso(job.deadline().dueMin())));
    why.run().ifPresent(run -> run(object, run));
    object.put("late_min", why.lateMin());
    why.unplaced()
        .ifPresent(
            u -> object.putObject("unplaced").put("reason", u.reason()).put("cure", u.cure()));
    object.put("cost", why.cost());
    ArrayNode charges = object.putArray("charges");
    why.charges().forEach(c -> charge(charges.addObject(), c));
    ArrayNode time = object.putArray("time");
    why.chain().forEach(s -> stretch(time.addObject(), s));
    ArrayNode elsewhere = object.putArray("elsewhere");
    why.elsewhere().forEach(p -> placement(elsewhere.addObject(), p));
    object.put("cures_tried", why.cures().tried());
    ArrayNode cures = object.putArray("cures");
    why.cures().helping().forEach(c -> cure(cures.addObject(), c));
    return object;
  }

  private void run(ObjectNode object, Run run) {
    object.put("run", run.id()).put("press", run.press()).put("mold", run.mold());
    object.put("start", clock.iso(run.startMin())).put("end", clock.iso(run.endMin()));
    object.put("ready", clock.iso(run.readyMin()));
  }

  private static void charge(ObjectNode object, Charge charge) {
    object.put("rule", charge.rule().name()).put("amount", charge.amount());
    object.put("because", charge.because()).put("words", charge.rule().sentence());
  }

  private void stretch(ObjectNode object, Stretch stretch) {
    object.put("what", stretch.what().name().toLowerCase(Locale.ROOT));
    object.put("line", stretch.line());
    stretch
        .waited()
        .ifPresent(
            w ->
                object
                    .put("cause", w.cause().name().toLowerCase(Locale.ROOT))
                    .put("waits_for", w.what()));
    object.put("from", clock.iso(stretch.fromMin())).put("to", clock.iso(stretch.toMin()));
    object.put("minutes", stretch.minutes()).put("because", stretch.because());
    object.put(
        "words", stretch.waited().map(w -> w.cause().words()).orElse(stretch.what().words()));
  }

  private void placement(ObjectNode object, Placement place) {
    object.put("press", place.press()).put("mold", place.mold()).put("place", place.place());
    object.put("spot", place.spot());
    object.put("after", place.after()).put("start", clock.iso(place.startMin()));
    object.put("late_min", place.lateMin()).put("costs_more", place.costsMore());
  }

  private static void cure(ObjectNode object, Cure cure) {
    object.put("what", cure.what()).put("placed", cure.placed());
    object.put("late_min", cure.lateMin()).put("costs_more", cure.costsMore());
  }
}
