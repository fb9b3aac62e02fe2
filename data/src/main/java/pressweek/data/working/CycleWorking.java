package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import pressweek.data.files.PlantRow.Loading;
import pressweek.data.files.StandardRow;
import pressweek.data.molding.Cycle;
import pressweek.data.molding.Cycle.Hands;

/** The whole cycle with its loading, and how many presses one operator can tend. */
final class CycleWorking {
  private CycleWorking() {}

  static Section of(RunFacts facts) {
    List<Line> lines = new ArrayList<>();
    if (facts.mold().handLoad()) {
      loading(facts, lines);
    }
    estimate(facts, lines);
    recorded(facts, lines);
    facts.pace().counts().ifPresent(timed -> operators(facts, timed, lines));
    return new Section("Whole cycle and operators", lines);
  }

  /** Unloading and loading of a shot by hand. */
  private static Hands hands(RunFacts facts) {
    Loading loading = facts.plant().run().loading();
    double loadS =
        facts.inserts().stream()
            .mapToDouble(i -> i.pieces() * i.loadS().orElse(loading.loadSPerInsert()))
            .sum();
    return new Hands(loading.unloadS(), loadS * facts.live());
  }

  private static void loading(RunFacts facts, List<Line> lines) {
    Loading loading = facts.plant().run().loading();
    if (facts.inserts().isEmpty()) {
      lines.add(
          new Line.Unknown(
              "loading by hand", List.of("the item's inserts (guide.json, bom.csv, orders.csv)")));
      return;
    }
    List<String> each =
        facts.inserts().stream()
            .map(
                i ->
                    "%d x %s s"
                        .formatted(
                            i.pieces(), Figure.exact(i.loadS().orElse(loading.loadSPerInsert()))))
            .toList();
    boolean all = facts.inserts().stream().allMatch(i -> i.loadS().isPresent());
    lines.add(
        new Line.Sum(
            "loading by hand",
            "live cavities x (pieces x seconds each)",
            "%d x (%s)".formatted(facts.live(), String.join(" + ", each)),
            Figure.of(hands(facts).loadS()) + " s",
            Basis.ESTIMATE));
    lines.add(
        new Line.Note(
            all
                ? "seconds each by inserts.csv load_s"
                : "seconds each by plant.json run.load_s_per_insert where inserts.csv load_s is"
                    + " empty"));
  }

  private static void estimate(RunFacts facts, List<Line> lines) {
    if (facts.pace().estimated().isEmpty()) {
      lines.add(
          new Missing(facts)
              .mold(facts.mold().cycleS(), "cycle_s")
              .line("estimate of the whole cycle"));
      return;
    }
    lines.add(
        facts.mold().handLoad()
            ? byHand(facts)
            : estimated(
                facts,
                "whole cycle",
                "the mold's own; a machine's loading is counted in it",
                Figure.exact(facts.mold().cycleS().orElse(0)) + " s"));
    boolean beside = facts.mold().handLoad() && facts.pace().lowerHalves() > 1;
    if (beside && hands(facts).bothS() > facts.mold().cycleS().orElse(0)) {
      lines.add(
          new Line.Note(
              "the hands are slower than the mold: the operator sets the pace, and it differs from"
                  + " person to person"));
    }
  }

  private static Line byHand(RunFacts facts) {
    Hands hands = hands(facts);
    String mold = Figure.exact(facts.mold().cycleS().orElse(0)) + " s";
    String unload = Figure.exact(hands.unloadS()) + " s";
    String load = Figure.of(hands.loadS()) + " s";
    String index = Figure.exact(facts.plant().run().loading().indexS()) + " s";
    return switch (facts.pace().lowerHalves()) {
      case 0, 1 ->
          estimated(
              facts,
              "whole cycle, one lower half",
              "mold + unload + load",
              mold + " + " + unload + " + " + load);
      case 2 ->
          estimated(
              facts,
              "whole cycle, two lower halves",
              "max(mold, unload + load) + index",
              "max(%s, %s + %s) + %s".formatted(mold, unload, load, index));
      default ->
          estimated(
              facts,
              "whole cycle, a station each",
              "max(mold, unload, load) + index",
              "max(%s, %s, %s) + %s".formatted(mold, unload, load, index));
    };
  }

  private static Line estimated(RunFacts facts, String what, String formula, String numbers) {
    double cycleS = facts.pace().estimated().map(RunFacts.Timed::cycleS).orElse(0.0);
    return new Line.Sum(what, formula, numbers, Figure.of(cycleS) + " s", Basis.ESTIMATE);
  }

  private static void recorded(RunFacts facts, List<Line> lines) {
    if (facts.pace().standard().isEmpty()) {
      lines.add(
          new Line.Note(
              facts.pace().estimated().isPresent()
                  ? "the estimate counts: standards.csv has no row for this mold, resin and press"
                  : "nothing counts: a row in standards.csv would"));
      return;
    }
    StandardRow row = facts.pace().standard().get();
    lines.add(
        new Line.Sum(
            "whole cycle",
            "",
            row.at() + " cycle_s",
            Figure.exact(row.cycleS()) + " s",
            Basis.RECORDED));
    lines.add(
        new Line.Note(
            facts
                .pace()
                .estimated()
                .map(e -> "the recorded cycle counts, not the estimate of " + Figure.of(e.cycleS()))
                .map(text -> text + " s")
                .orElse("the recorded cycle counts")));
  }

  private static void operators(RunFacts facts, RunFacts.Timed timed, List<Line> lines) {
    Hands hands = hands(facts);
    OptionalInt presses =
        facts.mold().handLoad() && !facts.inserts().isEmpty()
            ? Cycle.pressesPerOperator(timed.cycleS(), hands.bothS())
            : OptionalInt.empty();
    if (presses.isPresent()) {
      lines.add(
          new Line.Sum(
              "presses that one operator can tend",
              "floor(cycle / (unload + load))",
              "floor(%s s / (%s s + %s s))"
                  .formatted(
                      Figure.of(timed.cycleS()),
                      Figure.exact(hands.unloadS()),
                      Figure.of(hands.loadS())),
              Integer.toString(presses.getAsInt()),
              Basis.ESTIMATE));
    }
    boolean own =
        facts.pace().standard().filter(r -> r.operatorThousandths().isPresent()).isPresent();
    lines.add(
        new Line.Sum(
            "operators that the plan reserves",
            "",
            own
                ? "standards.csv operators"
                : facts.mold().handLoad()
                    ? "plant.json run.operators_hand_load"
                    : "plant.json run.operators_other",
            Figure.exact(timed.operatorThousandths() / 1000.0),
            own ? Basis.RECORDED : Basis.ESTIMATE));
  }
}
