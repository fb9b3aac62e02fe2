package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.files.PlantRow.RunFigures;
import pressweek.data.molding.Amounts;

/** Shots, hours and inserts of the run. */
final class QuantityWorking {
  private QuantityWorking() {}

  /** Good pieces: the quantity, rounded up to full cartons. */
  static int good(RunFacts facts) {
    return Amounts.multiple(facts.made().quantity(), facts.plant().run().cartonMultiple());
  }

  /** Shots of the run, without those of the start. */
  static long shots(RunFacts facts) {
    return Amounts.shots(good(facts), scrapPct(facts), facts.live());
  }

  private static double scrapPct(RunFacts facts) {
    return facts
        .pace()
        .counts()
        .map(RunFacts.Timed::scrapPct)
        .orElse(facts.plant().run().scrapPct());
  }

  static int startupShots(RunFacts facts) {
    return facts
        .pace()
        .counts()
        .map(RunFacts.Timed::startupShots)
        .orElse(facts.plant().run().startupShots());
  }

  static Section of(RunFacts facts) {
    List<Line> lines = new ArrayList<>();
    int multiple = facts.plant().run().cartonMultiple();
    if (multiple > 1) {
      lines.add(
          new Line.Sum(
              "good pieces",
              "quantity rounded up to full cartons",
              facts.made().quantity() + " to a multiple of " + multiple,
              Integer.toString(good(facts)),
              Basis.ARITHMETIC));
    }
    double scrapPct = scrapPct(facts);
    boolean own = facts.pace().standard().filter(r -> r.scrapPct().isPresent()).isPresent();
    lines.add(
        new Line.Sum(
            "shots",
            "good / ((1 - scrap) x live cavities), rounded up",
            "%d / ((1 - %s) x %d)"
                .formatted(good(facts), Figure.exact(scrapPct / 100), facts.live()),
            Long.toString(shots(facts)),
            own ? Basis.ARITHMETIC : Basis.ESTIMATE));
    lines.add(
        new Line.Note(
            "scrap %s %% by %s; and %d start-up shots after a change"
                .formatted(
                    Figure.exact(scrapPct),
                    own ? "standards.csv (recorded)" : "plant.json run.scrap_pct (estimate)",
                    startupShots(facts))));
    facts.pace().counts().ifPresent(timed -> hours(facts, timed, lines));
    inserts(facts, lines);
    return new Section("Shots, hours and inserts", lines);
  }

  private static void hours(RunFacts facts, RunFacts.Timed timed, List<Line> lines) {
    lines.add(minutes("working time of the run", "shots", shots(facts), facts, timed));
    if (startupShots(facts) > 0) {
      String name = "and after a change that exchanges something";
      lines.add(minutes(name, "start-up shots", startupShots(facts), facts, timed));
    }
  }

  private static Line minutes(
      String name, String what, long shots, RunFacts facts, RunFacts.Timed timed) {
    double efficiency = facts.plant().efficiencyPct();
    long minutes = Amounts.minutes(shots, Amounts.cycleMillis(timed.cycleS()), efficiency);
    return new Line.Sum(
        name,
        what + " x whole cycle / efficiency",
        "%d x %s s / %s"
            .formatted(shots, Figure.of(timed.cycleS()), Figure.exact(efficiency / 100)),
        minutes + " min (" + Figure.of(minutes / 60.0) + " h)",
        Basis.ESTIMATE);
  }

  private static void inserts(RunFacts facts, List<Line> lines) {
    if (facts.inserts().isEmpty()) {
      lines.add(
          new Line.Note(
              "no insert is known for this item; guide.json, bom.csv or orders.csv would name it"));
    }
    RunFigures run = facts.plant().run();
    boolean plugs = facts.mold().change().dummyPlugs();
    for (RunFacts.Loaded insert : facts.inserts()) {
      String name = insert.insert().isEmpty() ? "inserts" : "inserts " + insert.insert();
      long parts = shots(facts) * facts.live();
      int startup = plugs ? 0 : startupShots(facts) * facts.live() * insert.pieces();
      int pieces =
          Amounts.inserts(parts, insert.pieces(), run.insertLossPct(), run.samples()) + startup;
      lines.add(
          new Line.Sum(
              name,
              "shots x live cavities x pieces / (1 - loss) + samples + start-up",
              "%d x %d x %d / (1 - %s) + %d + %d"
                  .formatted(
                      shots(facts),
                      facts.live(),
                      insert.pieces(),
                      Figure.exact(run.insertLossPct() / 100),
                      run.samples() * insert.pieces(),
                      startup),
              pieces + " pieces",
              Basis.ESTIMATE));
      lines.add(
          new Line.Note(
              plugs
                  ? "start-up shots run with plugs and take none"
                  : "start-up shots take inserts, since molds.csv dummy_plugs is no"));
    }
  }
}
