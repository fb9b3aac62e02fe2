package pressweek.solver.audit;

import static pressweek.solver.audit.Broken.edit;
import static pressweek.solver.audit.Broken.set;
import static pressweek.solver.audit.Parts.at;

import java.util.List;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Rule;

/** Inserts that are not there or come from the wrong lot. */
final class BrokenStock {
  private BrokenStock() {}

  static final List<Broken> INSERTS =
      List.of(
          set(
                  "problem.materials.stock.lots[L2].onHand",
                  75,
                  Rule.LOTS,
                  "run R3 (B/1) on P1 pulls 46 of insert I1 from lot L2, which has 1 less")
              .times(2),
          set(
                  "problem.materials.stock.receipts[0].usableMin",
                  at("Mon 17:02"),
                  Rule.INSERTS,
                  "run R7 (D/1) on P2 needs 100 of insert I1 by Mon 2026-11-30 17:01, only 4 are free then")
              .also(Rule.LOTS),
          set(
                  "problem.materials.stock.lots[K1].onHand",
                  197,
                  Rule.INSERTS,
                  "run R9 (F/1) on P3 needs 43 of insert I2 by Thu 2026-12-03 06:20, only 42 are free then")
              .also(Rule.LOTS));

  static final List<Broken> LOTS =
      List.of(
          set(
                  "pulls[0].pieces",
                  79,
                  Rule.LOTS,
                  "run R2 (A/2) on P1 has pulls of 79 of insert I1; it needs 80")
              .times(3),
          set(
                  "pulls[1].pieces",
                  10,
                  Rule.LOTS,
                  "run R6 (C/2) on P2 pulls insert I1 from lot L2, but lot L1 comes first and has 10 left")
              .and("pulls[2].pieces", 40)
              .times(3),
          edit(
                  "pulls",
                  Edited.with(5, new Pull("R7", "P2", at("Mon 17:01"), "I1", "L2", "bin L2", 0, 4)),
                  Rule.LOTS,
                  "run R7 (D/1) on P2 mixes lots of insert I1, though the receipt of Mon 2026-11-30"
                      + " 15:00 suffices for all 100")
              .and("pulls[6].pieces", 96),
          edit(
                  "pulls",
                  Edited.with(9, new Pull("R9", "P3", at("Thu 06:20"), "I2", "K1", "bin K1", 0, 1)),
                  Rule.LOTS,
                  "over the week 199 of I2 are pulled, and its runs take 198")
              .times(2),
          set("pulls[0].lot", "L4", Rule.LOTS, "pulls 80 of insert I1 from lot L4, which is held")
              .and("pulls[0].bin", "bin L4")
              .times(2),
          set("pulls[0].lot", "L5", Rule.LOTS, "from lot L5, which has expired by then")
              .and("pulls[0].bin", "bin L5")
              .times(2),
          set("pulls[0].lot", "L3", Rule.LOTS, "from lot L3, which is reserved for B")
              .and("pulls[0].bin", "bin L3")
              .times(3),
          set("pulls[3].pieces", 61, Rule.LOTS, "1 more than are reserved for it there")
              .and("pulls[4].pieces", 45)
              .times(2),
          set("pulls[3].pieces", 50, Rule.LOTS, "leaves 10 of insert I1 in lots reserved for it")
              .times(3),
          set("pulls[0].lot", "", Rule.LOTS, "which may be used only then")
              .and("pulls[0].bin", "")
              .and("pulls[0].receiptMin", at("Mon 15:00"))
              .times(2),
          set(
              "pulls[8].bin",
              "bin 7",
              Rule.LOTS,
              "pulls insert I2 from lot \"K1\", bin \"bin 7\", receipt \"\", which does not exist"),
          set("pulls[8].press", "P1", Rule.LOTS, "has insert I2 pulled to press P1"),
          set(
              "pulls[8].needByMin",
              at("Thu 06:21"),
              Rule.LOTS,
              "has insert I2 pulled by Thu 2026-12-03 06:21; expected by 06:20"),
          set("pulls[8].run", "R77", Rule.LOTS, "is for run R77, which is not in the plan")
              .times(2),
          set("pulls[8].pieces", 0, Rule.LOTS, "has a pull of 0 of insert I2; expected at least 1")
              .times(3),
          set(
                  "pulls[8].insert",
                  "I1",
                  Rule.LOTS,
                  "run R9 (F/1) on P3 has pulls of 43 of insert I1; it needs 0")
              .times(5),
          set("problem.materials.stock.checked", false, Rule.LOTS, "the plant gave no lots")
              .times(9));
}
