package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;
import static pressweek.solver.audit.WeekPlan.charge;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Bound;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Terms;

/**
 * P1 runs M1 to 07:00, then M2 from 08:10 to 09:15 with 5 min of start-up, and M1 again from 11:00
 * to 12:00. The week closes on Tuesday, with P2.
 */
class WholeChargeTest {
  private static final String M1 = "M1 T8 PP BK";
  private static final String M2 = "M2 - PP BK";

  private static Problem problem(Terms terms) {
    Problem problem =
        TinyWeek.problem(
            job("A/1", "PP BK", option("P1 M1 T8", pace(60, 0, 0), making(0))),
            job("A/2", "PP BK", option("P1 M2", pace(60, 5, 0), making(0))),
            job("A/3", "PP BK", option("P1 M1 T8", pace(60, 0, 0), making(0))),
            job("B/1", "ABS RD", option("P2 M4", pace(60, 0, 0), making(0))));
    return Arranged.set(problem, "settled.terms", terms);
  }

  private static Terms campaigns(int leastMin, long perHour) {
    return new Terms(leastMin, perHour, 0, 0, List.of());
  }

  private static Plan plan(Terms terms, Charge... charges) {
    List<Run> runs =
        List.of(
            WeekPlan.run(
                "R1 A/1 P1 M1 1",
                WeekPlan.none("Mon 06:00", WeekPlan.setup(M1)),
                "Mon 06:00",
                "Mon 07:00"),
            WeekPlan.run(
                "R2 A/2 P1 M2 2",
                exchange(M1, M2, "Mon 07:00 - Mon 08:10"),
                "Mon 08:10",
                "Mon 09:15"),
            WeekPlan.run(
                "R3 A/3 P1 M1 3",
                exchange(M2, M1, "Mon 09:20 - Mon 11:00"),
                "Mon 11:00",
                "Mon 12:00"),
            WeekPlan.run(
                "R4 B/1 P2 M4 1",
                WeekPlan.none("Tue 06:00", WeekPlan.setup("M4 - ABS RD")),
                "Tue 06:00",
                "Tue 07:00"));
    return TinyWeek.with(TinyWeek.plan(problem(terms), runs), Arranged.opening(List.of(), charges));
  }

  private static Change exchange(String from, String to, String span) {
    return WeekPlan.change(from + " > " + to, span, 70, 0, ChangeKind.MOLD);
  }

  /** The M2 campaign takes 65 min; a minute less than 66 costs 60.00 / 60. */
  @Test
  void aCampaignIsAsLongAsThePlantWantsIt() {
    assertThat(TinyWeek.told(plan(campaigns(65, 6_000_000)))).isEmpty();
    assertThat(TinyWeek.told(plan(campaigns(66, 6_000_000), charge(Rule.SHORT_CAMPAIGN, 100_000))))
        .isEmpty();
    assertThat(TinyWeek.told(plan(campaigns(66, 6_000_000))))
        .containsExactly(
            "FIGURES charge 1 of the plant as a whole is none; expected 1.00000 by SHORT_CAMPAIGN",
            "FIGURES figures list SHORT_CAMPAIGN with 0.00000; the charges come to 1.00000");
    // 1 min at 0.00059 an hour is less than a thousandth of a cent.
    assertThat(TinyWeek.told(plan(campaigns(66, 59)))).isEmpty();
  }

  /**
   * M1 was there before the plan, and stays after it, as M4 does: 1000 min are asked of M2 alone.
   */
  @Test
  void whatBeginsBeforeOrEndsAfterThePlanIsNoShortCampaign() {
    assertThat(
            TinyWeek.told(
                plan(campaigns(1000, 6_000_000), charge(Rule.SHORT_CAMPAIGN, 93_500_000))))
        .isEmpty();
  }

  /** When M1 is taken off at last, by a dismount of 24 min, its 60 min are another campaign. */
  @Test
  void aDismountEndsACampaign() {
    Charge second = charge(Rule.SHORT_CAMPAIGN, 1_000_000);
    Plan plan = plan(campaigns(70, 6_000_000), charge(Rule.SHORT_CAMPAIGN, 500_000), second);
    Dismount off = new Dismount("P1", "M1", at("Mon 12:00"), at("Mon 12:24"), 24, 0);
    plan = Edited.set(plan, "dismounts", List.of(off));
    plan = Edited.set(plan, "figures.changes", plan.figures().changes() + 1);
    plan = Edited.set(plan, "figures.changeMin", plan.figures().changeMin() + 24);
    assertThat(TinyWeek.told(plan)).isEmpty();
  }

  /** Monday 06:00 to Tuesday 07:00 are 25 h at 1.00. */
  @Test
  void theCloseIsTheEndOfTheLastRun() {
    Terms close = new Terms(0, 0, 100_000, 0, List.of());
    assertThat(TinyWeek.told(plan(close, charge(Rule.CLOSE, 2_500_000)))).isEmpty();
    assertThat(TinyWeek.told(plan(close, charge(Rule.CLOSE, 2_500_001))))
        .containsExactly(
            "FIGURES charge 1 of the plant as a whole is 25.00001 by CLOSE; expected 25.00000 by"
                + " CLOSE",
            "FIGURES figures list CLOSE with 25.00001; the charges come to 25.00000");
    assertThat(TinyWeek.told(plan(close)))
        .contains("FIGURES charge 1 of the plant as a whole is none; expected 25.00000 by CLOSE");
  }

  @Test
  void chargesComeInTheirOrderAndNoneOfNothing() {
    Terms both = new Terms(66, 6_000_000, 100_000, 0, List.of());
    Charge campaign = charge(Rule.SHORT_CAMPAIGN, 100_000);
    Charge close = charge(Rule.CLOSE, 2_500_000);
    assertThat(TinyWeek.told(plan(both, campaign, close))).isEmpty();
    assertThat(TinyWeek.told(plan(both, close, campaign)))
        .containsExactly(
            "FIGURES charge 1 of the plant as a whole is 25.00000 by CLOSE; expected 1.00000 by"
                + " SHORT_CAMPAIGN");
    assertThat(TinyWeek.told(plan(Terms.NONE, charge(Rule.CLOSE, 0))))
        .contains("FIGURES charge 1 of the plant as a whole is 0.00000 by CLOSE; expected none");
  }

  @Test
  void whatARunIsChargedIsNotForThePlant() {
    Terms close = new Terms(0, 0, 100_000, 0, List.of());
    Plan plan = plan(close);
    Plan moved = Edited.set(plan, "runs[R4].charges", List.of(charge(Rule.CLOSE, 2_500_000)));
    moved = TinyWeek.with(moved, plan.head().plantWide());
    assertThat(TinyWeek.told(moved))
        .containsExactly(
            "FIGURES run R4 (B/1) on P2 is charged 25.00000 by CLOSE; expected 0.00000",
            "FIGURES charge 1 of the plant as a whole is none; expected 25.00000 by CLOSE");
  }

  /** The plan costs 25.00 for its close. */
  @Test
  void aProvedBoundIsTheSumOfItsPartsAndNoMoreThanThePlanCosts() {
    assertThat(TinyWeek.told(bound(2_500_000, 2_000_000, 500_000))).isEmpty();
    assertThat(TinyWeek.told(bound(0))).isEmpty();
    assertThat(TinyWeek.told(bound(2_500_000, 2_000_000, 499_999)))
        .containsExactly("FIGURES the proved bound is 25.00000; its parts come to 24.99999");
    assertThat(TinyWeek.told(bound(2_500_001, 2_000_000, 500_001)))
        .containsExactly(
            "FIGURES the proved bound is 25.00001; the plan itself costs only 25.00000");
    assertThat(TinyWeek.told(bound(-1, -1)))
        .containsExactly("FIGURES the proved bound is -0.00001; expected no less than nothing");
  }

  private static Plan bound(long amount, long... parts) {
    Plan plan = plan(new Terms(0, 0, 100_000, 0, List.of()), charge(Rule.CLOSE, 2_500_000));
    List<Bound.Part> named =
        Arrays.stream(parts).mapToObj(part -> new Bound.Part("part", part)).toList();
    PlantWide whole =
        Edited.set(plan.head().plantWide(), "bound", Optional.of(new Bound(amount, named)));
    return TinyWeek.with(plan, whole);
  }
}
