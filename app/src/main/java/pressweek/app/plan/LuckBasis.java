package pressweek.app.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pressweek.data.files.PlantRow;
import pressweek.data.learning.LearnedLuck;
import pressweek.data.learning.LearnedLuck.Source;
import pressweek.data.problem.Uncertainty;

/** Where the figures of an uncertainty come from, a sentence each. */
public final class LuckBasis {
  private static final String KEY = "uncertainty.";

  private final PlantRow plant;
  private final LearnedLuck luck;

  private LuckBasis(PlantRow plant, LearnedLuck luck) {
    this.plant = plant;
    this.luck = luck;
  }

  /** The sentences for the figures of a plant. */
  public static List<String> of(PlantRow plant) {
    return of(plant, new LearnedLuck(plant.uncertainty(), Map.of()));
  }

  /** The same for figures of which past runs told some. */
  public static List<String> of(PlantRow plant, LearnedLuck luck) {
    return new LuckBasis(plant, luck).sentences(luck.uncertainty());
  }

  private String learnt(Source source, String otherwise) {
    return luck.learnt().getOrDefault(source, otherwise);
  }

  private List<String> sentences(Uncertainty u) {
    List<String> all = new ArrayList<>();
    String cycles =
        "cycles: %s of the planned in the mean, spread %s%s"
            .formatted(
                pct(u.cycle().meanPct()),
                pct(u.cycle().spreadPct()),
                from("cycle_pct", "cycle_spread_pct"));
    String scrap =
        "scrap: spread %s of what the plan allows%s"
            .formatted(pct(u.scrapSpreadPct()), from("scrap_spread_pct"));
    String changes =
        "changes: %s of the planned in the mean, spread %s%s"
            .formatted(
                pct(u.change().meanPct()),
                pct(u.change().spreadPct()),
                from("change_pct", "change_spread_pct"));
    all.add(learnt(Source.CYCLE, cycles));
    all.add(learnt(Source.SCRAP, scrap));
    all.add(learnt(Source.CHANGE, changes));
    breakdowns(u, all);
    all.add(
        "deliveries: %s late, then by %s d in the mean%s"
            .formatted(
                pct(u.receipts().latePct()),
                number(u.receipts().lateDays()),
                from("receipt_late_pct", "receipt_late_days")));
    asked(u, all);
    return all;
  }

  private void breakdowns(Uncertainty u, List<String> all) {
    boolean learnt = luck.learnt().containsKey(Source.BREAKDOWN);
    all.add(
        learnt(
            Source.BREAKDOWN,
            breakdown("a press", u.breakdown())
                + from("breakdown_every_h", "repair_min", "repair_spread_pct")));
    u.presses()
        .forEach(
            p ->
                all.add(
                    breakdown(p.press(), p.breakdown())
                        + (learnt ? " (past runs)" : from("presses"))));
  }

  private void asked(Uncertainty u, List<String> all) {
    all.add(
        "sure: on time in %s of the replays%s".formatted(pct(u.aim().surePct()), from("sure_pct")));
    all.add(
        "work goes on for up to %d d after the horizon%s"
            .formatted(u.effort().daysOn(), from("after_horizon_days")));
    all.add(
        String.format(
            Locale.ROOT,
            "tried: %d of a kind, %,d runs for each%s",
            u.effort().triedOfAKind(),
            u.effort().triedRuns(),
            from("tried_of_a_kind", "tried_runs")));
  }

  private static String breakdown(String press, Uncertainty.Breakdown of) {
    return of.everyH() == 0
        ? press + " never breaks down"
        : "%s breaks down every %s h of running in the mean, repair %s min, spread %s"
            .formatted(
                press, number(of.everyH()), number(of.repairMin()), pct(of.repairSpreadPct()));
  }

  /** The plant's own figures, or the estimates of the program for what it does not give. */
  private String from(String... keys) {
    long given = java.util.Arrays.stream(keys).filter(k -> plant.gave(KEY + k)).count();
    return given == keys.length
        ? " (plant.json)"
        : given == 0 ? " (plant estimate)" : " (plant.json and plant estimate)";
  }

  private static String pct(double value) {
    return number(value) + " %";
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
