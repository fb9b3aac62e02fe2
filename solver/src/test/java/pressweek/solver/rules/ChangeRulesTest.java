package pressweek.solver.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import pressweek.data.molding.Changeover;
import pressweek.data.plan.ChangeKind;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Problem;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Setup;
import pressweek.solver.RandomPlant;

/** The prepared tables of the search say what the one home of changes says. */
final class ChangeRulesTest {
  @Test
  void agreesWithChangeoverOnDrawnSetups() {
    for (long seed = 1; seed <= 30; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Problem problem = withRecords(RandomPlant.of(seed, 20, 4).build(), random);
      Names names = new Names(problem);
      ChangeRules rules = new ChangeRules(problem, names);
      Changeover home = new Changeover(problem);
      for (int i = 0; i < 300; i++) {
        compare(rules, home, names, random);
      }
    }
  }

  private static void compare(
      ChangeRules rules, Changeover home, Names names, SplittableRandom random) {
    ChangeRules.State from = new ChangeRules.State();
    from.mold = random.nextInt(names.molds().size() + 1) - 1;
    from.tooling = random.nextInt(names.toolings().size());
    from.material = random.nextInt(names.materials().size());
    int mold = random.nextInt(names.molds().size());
    int tooling = random.nextInt(names.toolings().size());
    int material = random.nextInt(names.materials().size());
    int press = random.nextInt(4);
    boolean clear = random.nextBoolean();
    rules.ask(press, from, mold, tooling, material, clear);
    Setup before =
        setup(
            names, from.mold < 0 ? "" : names.molds().get(from.mold), from.tooling, from.material);
    Setup after = setup(names, names.molds().get(mold), tooling, material);
    Changeover.Step step = home.between("P" + press, before, after, clear, false);
    assertThat(rules.minutes).isEqualTo(step.minutes());
    assertThat(rules.purgeG).isEqualTo(step.purgeG());
    int bits = 0;
    for (ChangeKind kind : step.kinds()) {
      bits |= 1 << kind.ordinal();
    }
    assertThat(rules.kinds).isEqualTo(bits);
  }

  private static Setup setup(Names names, String mold, int tooling, int material) {
    Names.Material in = names.materials().get(material);
    return new Setup(mold, names.toolings().get(tooling), in.resin(), in.colour());
  }

  private static Problem withRecords(Problem problem, SplittableRandom random) {
    Floor floor = problem.floor();
    List<RecordedChange> records =
        List.of(
            new RecordedChange(
                "P1",
                new Setup("M1", "", "", ""),
                new Setup("M2", "", "", ""),
                random.nextInt(50),
                OptionalInt.of(7)),
            new RecordedChange(
                "",
                new Setup("", "", "PP", ""),
                new Setup("", "", "ABS", "C1"),
                random.nextInt(50),
                OptionalInt.empty()));
    return new Problem(
        problem.plant(),
        new Floor(
            floor.presses(),
            floor.molds(),
            floor.states(),
            floor.downtime(),
            floor.promises(),
            records),
        problem.materials(),
        problem.jobs(),
        problem.unplaced(),
        problem.notChecked(),
        Optional.empty());
  }
}
