package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.molding.Changeover;
import pressweek.data.problem.ChangeTable;

/** What a typical change purges. */
final class PurgeWorking {
  private PurgeWorking() {}

  static Section of(RunFacts facts) {
    List<Line> lines = new ArrayList<>();
    boolean rated = facts.press().size().shotPsG().isPresent();
    int barrelG =
        Changeover.barrelG(facts.press().size().shotPsG(), facts.plant().barrelDefaultG());
    if (!rated) {
      lines.add(
          new Line.Note(
              "the barrel is plant.json barrel_default_g; "
                  + new Missing(facts).press(false, "shot_ps_g").words()
                  + " would say it"));
    }
    ChangeTable table = facts.plant().changes();
    lines.add(line("from a lighter colour", table.colour().purgeDarkerThousandths(), barrelG));
    lines.add(line("from a darker colour", table.colour().purgeLighterThousandths(), barrelG));
    lines.add(line("from another resin", table.resin().purgeThousandths(), barrelG));
    lines.add(
        new Line.Note("barrels by plant.json change; a row in changes_recorded.csv beats them"));
    List<String> never = facts.plastic().resin().map(row -> row.neverNextTo()).orElse(List.of());
    if (!never.isEmpty()) {
      lines.add(
          new Line.Caution(
              facts.plastic().resinId()
                  + " never before or after "
                  + String.join(", ", never)
                  + " in one barrel: a hot mixture may decompose; purge with a third resin by the site's procedure"));
    }
    return new Section("Purge of a typical change", lines);
  }

  private static Line line(String from, int thousandths, int barrelG) {
    return new Line.Sum(
        from,
        "barrels x barrel",
        "%s x %d g".formatted(Figure.exact(thousandths / 1000.0), barrelG),
        Figure.of(Changeover.purgeG(barrelG, thousandths) / 1000.0) + " kg",
        Basis.ESTIMATE);
  }
}
