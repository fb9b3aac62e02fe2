package pressweek.solver.audit;

import static pressweek.solver.audit.Broken.edit;
import static pressweek.solver.audit.Broken.set;
import static pressweek.solver.audit.Parts.at;

import java.util.List;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Setup;

/** Figures, charges, waits and lists that are wrong. */
final class BrokenFigures {
  private BrokenFigures() {}

  static final List<Broken> FIGURES =
      List.of(
          set(
              "figures.placedLines",
              8,
              Rule.FIGURES,
              "figures say 8 placed lines; the plan comes to 9"),
          set(
              "figures.unplacedLines",
              1,
              Rule.FIGURES,
              "figures say 1 unplaced lines; the plan comes to 2"),
          set(
              "figures.lateLines",
              0,
              Rule.FIGURES,
              "figures say 0 late lines; the plan comes to 1"),
          set(
              "figures.lateMin",
              2553L,
              Rule.FIGURES,
              "figures say 2553 minutes late; the plan comes to 2554"),
          set("figures.changes", 7, Rule.FIGURES, "figures say 7 changes; the plan comes to 8"),
          set(
              "figures.changeMin",
              576L,
              Rule.FIGURES,
              "figures say 576 minutes of change; the plan comes to 594"),
          set(
              "figures.purgeG",
              3000L,
              Rule.FIGURES,
              "figures say 3000 grams purged; the plan comes to 3100"),
          edit(
              "figures.costByRule",
              Edited.put(Rule.PURGE, 785_999L),
              Rule.FIGURES,
              "figures list PURGE with 7.85999; the charges come to 7.86000"),
          edit(
                  "problem.plant.rates.keptPressHour",
                  rate -> 0L,
                  Rule.FIGURES,
                  "figures list KEPT_PRESS with 137.50000; the charges come to nothing")
              .times(3),
          set(
              "runs[R9].readyMin",
              at("Thu 08:34"),
              Rule.FIGURES,
              "is ready Thu 2026-12-03 08:34; expected 09:34"),
          set(
              "runs[R9].charges[0].amount",
              45_962_500L,
              Rule.FIGURES,
              "run R9 (F/1) on P3 is charged 459.62500 by LATE; expected 459.62499"),
          edit(
              "runs[R9].charges",
              Edited.without(2),
              Rule.FIGURES,
              "is charged 0.00000 by PURGE; expected 0.64000"),
          edit(
              "runs[R4].charges",
              Edited.with(0, new Charge(Rule.START_UP, 5, "")),
              Rule.FIGURES,
              "is charged 0.00005 by START_UP; expected 0.00000"),
          set(
              "dismounts[0].cost",
              1_350_001L,
              Rule.FIGURES,
              "the dismount of mold M3 on P3 costs 13.50001; expected 13.50000"),
          set(
              "unplacedCharges[0].amount",
              53_000_000L,
              Rule.FIGURES,
              "line G/1 is charged 530.00000 by UNPLACED; expected 537.50000 by UNPLACED"),
          set(
              "unplacedCharges",
              List.of(),
              Rule.FIGURES,
              "1 lines found no place, 0 charges are listed"));

  private static final Wait EARLY = WeekPlan.wait(Cause.SETTER, "", "Mon 13:19", "Mon 13:27");
  private static final Wait WITHIN = WeekPlan.wait(Cause.SETTER, "", "Mon 13:20", "Mon 13:28");
  private static final Wait EMPTY = WeekPlan.wait(Cause.SETTER, "", "Mon 13:27", "Mon 13:27");
  private static final Dismount DISMOUNT = WeekPlan.plan().dismounts().get(0);

  static final List<Broken> LISTS =
      List.of(
          edit(
              "runs",
              Edited.reversed(),
              Rule.FIGURES,
              "runs are not listed by press, then by place"),
          edit(
              "pulls",
              Edited.reversed(),
              Rule.FIGURES,
              "pulls are not listed by the time they are needed"),
          edit(
                  "dismounts",
                  Edited.with(1, Edited.set(DISMOUNT, "startMin", at("Mon 09:00"))),
                  Rule.FIGURES,
                  "dismounts are not listed by their start")
              .also(Rule.PRESS_ONCE, Rule.PRESS_HOURS, Rule.MOLD_ONCE, Rule.SETTERS),
          set(
              "runs[R3].waits",
              List.of(EARLY),
              Rule.FIGURES,
              "run R3 (B/1) on P1 waits (no setter free) from Mon 2026-11-30 13:19 to 13:27"),
          set("runs[R3].waits", List.of(WITHIN), Rule.FIGURES, "beside its change"),
          set(
              "runs[R3].waits",
              List.of(EMPTY),
              Rule.FIGURES,
              "waits (no setter free) from Mon 2026-11-30 13:27 to 13:27"),
          edit(
              "runs[R6].waits",
              Edited.reversed(),
              Rule.FIGURES,
              "run R6 (C/2) on P2 waits (mold elsewhere)"),
          set(
              "runs[R9].change.from",
              new Setup("", "", "", ""),
              Rule.CHANGE_TIME,
              "changes from mold none"));
}
