package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pressweek.data.files.InsertRow;
import pressweek.data.files.PlantRow;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Preheat;

/** Heating inserts before they are loaded. */
final class PreheatWorking {
  private PreheatWorking() {}

  static Section of(RunFacts facts) {
    List<Line> lines = new ArrayList<>();
    boolean needed = facts.plastic().resin().filter(ResinRow::preheatInserts).isPresent();
    if (facts.plastic().resin().isEmpty()) {
      lines.add(new Missing(facts).resin(false, "preheat_inserts").line("insert preheat"));
    } else if (!needed) {
      lines.add(new Line.Note("resins.csv preheat_inserts is not yes: inserts are loaded cold"));
    } else {
      facts.inserts().forEach(insert -> lines.add(line(facts, insert)));
      if (facts.inserts().isEmpty()) {
        lines.add(new Line.Note("the resin asks for hot inserts; no insert is known"));
      }
      lines.add(
          new Line.Caution(
              "hot inserts burn; no hotter than plating, locking ring or tip bear (supplier's"
                  + " sheet)"));
    }
    return new Section("Insert preheat", lines);
  }

  private static Line line(RunFacts facts, RunFacts.Loaded insert) {
    PlantRow.Heat heat = facts.plant().heat();
    OptionalDouble own = insert.row().map(InsertRow::preheatC).orElse(OptionalDouble.empty());
    OptionalDouble most = insert.row().map(InsertRow::heatMaxC).orElse(OptionalDouble.empty());
    Preheat preheat = Preheat.of(own, heat.preheatC(), most);
    String name = insert.insert().isEmpty() ? "the insert" : insert.insert();
    String text =
        "%s: %s C for %s min (%s)"
            .formatted(
                name,
                Figure.exact(preheat.celsius()),
                Figure.exact(heat.preheatMin()),
                own.isPresent()
                    ? "recorded: inserts.csv preheat_c"
                    : "estimate: plant.json preheat.c");
    String answer =
        switch (preheat.answer()) {
          case FINE -> ", it bears " + Figure.exact(most.orElse(0)) + " C by its record";
          case TOO_HOT ->
              ": TOO HOT, it bears " + Figure.exact(most.orElse(0)) + " C by its record";
          case NOT_KNOWN -> "; what it bears is not known: inserts.csv heat_max_c";
        };
    return new Line.Note(text + answer);
  }
}
