package pressweek.reports.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Wait;
import pressweek.data.problem.NotChecked;
import pressweek.data.problem.Unplaced;
import pressweek.reports.sample.Hostile;
import pressweek.reports.sample.SamplePlan;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;

class SummaryTest {
  private static SmallPlan plan() {
    String monday = "2026-11-30T";
    SmallPlan plan =
        new SmallPlan()
            .job("4711", "V1", monday + "10:00")
            .run("R1", "4711", "V1", monday + "09:00", monday + "12:00")
            .because(
                List.of(
                    new Wait(
                        Cause.SETTER,
                        "",
                        SampleWeek.at(monday + "06:00"),
                        SampleWeek.at(monday + "09:00"))),
                List.of());
    plan.replaces = "2026-W49/2";
    plan.costs = Map.of(Rule.LATE, 50_000_000L);
    plan.references.add(new Reference("earliest-due-date order", 100_000_000L, 3, 90));
    plan.notChecked.add(new NotChecked("Drying", "resins.csv dry_h", 12));
    plan.unplaced.add(new Unplaced("4712", "1", "LV90/X", 10, "no mold makes LV90", "add one"));
    return plan;
  }

  @Test
  void summaryReadsFromWhoToWhereItIs() {
    assertThat(Summary.text(plan().plan(), List.of(), List.of("out/index.html")))
        .isEqualTo(
            """
            Quillback Grips: plan 2026-W49/3, replaces 2026-W49/2, made Mon 30 Nov 05:40

            Of 2 order lines, none is ready on time, 1 late by 2 h in all, 1 unplaced.
            Nothing has to be changed.
            Avoidable cost is EUR 500.00: 50 % below earliest-due-date order.
            How far from the best possible: cannot tell.

            Late
              4711/1 LV90/S0825/PP-BLK: due Mon 10:00, ready Mon 12:00, 2 h late
                  on V1: no setter free for 3 h, until Mon 09:00; runs from Mon 09:00 to Mon
                  12:00

            Unplaced
              4712/1 LV90/X: no mold makes LV90
                  cure: add one

            Not checked this week
              - Drying (add resins.csv dry_h, touches 12 lines)

            Beside simple ways of planning
                                              late or out    change time   avoidable cost
              this plan                                 1          0 min           500.00
              earliest-due-date order                   3     1 h 30 min         1,000.00

            Written
              out/index.html
            """);
  }

  @Test
  void brokenRulesComeFirstAndNothingIsPraised() {
    String text = Summary.text(plan().plan(), List.of("PRESS_ONCE: V1 twice"), List.of());
    assertThat(text)
        .contains("THIS PLAN BREAKS HARD RULES. DO NOT RUN IT.\n  - PRESS_ONCE: V1 twice")
        .doesNotContain("below earliest-due-date order")
        .doesNotContain("Beside simple ways");
    assertThat(text.indexOf("DO NOT RUN")).isLessThan(text.indexOf("Of 2 order lines"));
  }

  @Test
  void noMoneyIsShownWithoutRates() {
    SmallPlan plan = plan();
    plan.money = false;
    assertThat(Summary.text(plan.plan())).doesNotContain("EUR").doesNotContain("avoidable cost");
  }

  @Test
  void noLineIsWiderThanEightyColumns() {
    String wide = "x".repeat(200) + " ";
    for (String text :
        List.of(
            Summary.text(SamplePlan.of(14, 150)),
            Summary.text(SamplePlan.empty()),
            Summary.text(Hostile.of(plan().plan(), wide)))) {
      assertThat(text.lines()).allMatch(l -> l.length() <= 80);
    }
  }

  @Test
  void longListsAreCutAndSaidToBe() {
    SmallPlan plan = new SmallPlan();
    for (int i = 0; i < 23; i++) {
      plan.unplaced.add(new Unplaced("A" + i, "1", "X", 1, "no mold", "add one"));
    }
    assertThat(Summary.text(plan.plan()))
        .contains("A19/1")
        .doesNotContain("A20/1")
        .contains("and 3 more unplaced lines in the lists");
  }

  @Test
  void textCannotSteerTheTerminal() {
    String text = Summary.text(Hostile.of(plan().plan(), "\u001B[31m\u0007\u202E\u009B"));
    assertThat(text.chars()).noneMatch(c -> c < 0x20 && c != '\n' || c >= 0x7F && c <= 0x9F);
    assertThat(text).doesNotContain("\u202E").contains("?[31m???4711");
  }
}
