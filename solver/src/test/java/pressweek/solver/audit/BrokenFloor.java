package pressweek.solver.audit;

import static pressweek.solver.audit.Broken.edit;
import static pressweek.solver.audit.Broken.set;
import static pressweek.solver.audit.Parts.at;

import java.util.List;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Rule;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Promise;

/** What must stay as it is or apart on the floor. */
final class BrokenFloor {
  private BrokenFloor() {}

  static final List<Broken> FOOD =
      List.of(
          set(
                  "runs[R3].change.kinds",
                  List.of(ChangeKind.MOLD, ChangeKind.RESIN, ChangeKind.COLOUR),
                  Rule.FOOD,
                  "is food-grade, the press is not cleared")
              .also(Rule.CHANGE_TIME),
          set(
                  "problem.floor.presses[P1].food",
                  FoodUse.NEVER,
                  Rule.FOOD,
                  "is never used for food-grade work")
              .times(2),
          set(
                  "problem.floor.presses[P3].food",
                  FoodUse.ONLY,
                  Rule.FOOD,
                  "run R8 (E/1) on P3 is not food-grade, the press is for food-grade work only")
              .times(2),
          set(
              "problem.materials.resins[PP].neverNextTo",
              List.of("POM"),
              Rule.NEIGHBOURS,
              "run R6 (C/2) on P2 brings resin PP into a barrel after POM"),
          set(
              "problem.materials.resins[POM].neverNextTo",
              List.of("PP"),
              Rule.NEIGHBOURS,
              "run R6 (C/2) on P2 brings resin PP"),
          set(
              "problem.materials.resins[POM].neverNextTo",
              List.of("ABS"),
              Rule.NEIGHBOURS,
              "run R5 (C/1) on P2 brings resin POM into a barrel after ABS"));

  static final List<Broken> FLOOR =
      List.of(
          set(
              "problem.floor.states[P1].job",
              "A/2",
              Rule.RUNNING,
              "run R2 (A/2) on P1 is running already, but comes in place 2"),
          set(
              "problem.floor.states[P2].job",
              "G/1",
              Rule.RUNNING,
              "line G/1 is running on P2, the plan has no run of it there"),
          set(
                  "problem.floor.states[P1].setup.mold",
                  "M2",
                  Rule.RUNNING,
                  "is running with mold M2, not M1")
              .also(Rule.CHANGE_TIME),
          set(
                  "runs[R1].change.kinds",
                  List.of(ChangeKind.TOOLING),
                  Rule.RUNNING,
                  "needs no change, but has one of 0 min [TOOLING]")
              .also(Rule.CHANGE_TIME),
          set(
                  "runs[R1].startMin",
                  at("Mon 06:01"),
                  Rule.RUNNING,
                  "is running already and starts Mon 2026-11-30 06:01; expected 06:00")
              .and("runs[R1].change.startMin", at("Mon 06:01"))
              .and("runs[R1].change.endMin", at("Mon 06:01"))
              .also(Rule.RUN_TIME),
          set(
              "problem.floor.promises[0].startMin",
              at("Mon 07:01"),
              Rule.PROMISED,
              "starts Mon 2026-11-30 07:00, it is promised from Mon 2026-11-30 07:01"),
          set(
              "problem.floor.promises[0].startMin",
              at("Mon 05:59"),
              Rule.PROMISED,
              "no later than 06:59"),
          set(
              "problem.floor.promises[0].press",
              "P1",
              Rule.PROMISED,
              "is promised on P1 from Mon 2026-11-30 07:00"),
          set(
              "problem.floor.promises[0].job",
              "G/1",
              Rule.PROMISED,
              "line G/1 is promised on P2 from Mon 2026-11-30 07:00, the plan has no run of it"),
          edit(
              "problem.floor.promises",
              Edited.with(1, new Promise("D/1", "P2", at("Mon 17:00"))),
              Rule.PROMISED,
              "run R6 (C/2) on P2 comes before run R7 (D/1) on P2, which is promised"),
          edit(
                  "problem.floor.promises",
                  Edited.with(1, new Promise("C/2", "P2", at("Mon 06:30"))),
                  Rule.PROMISED,
                  "run R5 (C/1) on P2 comes before run R6 (C/2) on P2, which is promised for an earlier time")
              .times(2));
}
