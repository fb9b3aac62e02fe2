package pressweek.solver.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Take;
import pressweek.data.problem.Uncertainty;
import pressweek.data.problem.Uncertainty.Aim;
import pressweek.data.problem.Uncertainty.Breakdown;
import pressweek.data.problem.Uncertainty.LateReceipts;
import pressweek.data.problem.Uncertainty.Spread;
import pressweek.data.stress.Gain;
import pressweek.data.stress.LineChance;
import pressweek.data.stress.SlackGain;
import pressweek.data.stress.Stressed;
import pressweek.data.stress.Totals;
import pressweek.solver.DrawnWeeks;
import pressweek.solver.Plans;

class StressTest {
  private static final Uncertainty LUCK =
      new Uncertainty(
          new Spread(100, 8),
          50,
          new Spread(100, 30),
          new Breakdown(40, 90, 100),
          List.of(),
          new LateReceipts(20, 1),
          new Aim(90, List.of(60, 240, 1440)),
          OnePress.EFFORT);

  private static Stressed stress(Plan plan, int replays, int threads) {
    return new Stress(LUCK, new Stress.Asked(replays, 1, threads))
        .of(plan, Optional.empty(), List.of());
  }

  /** Thirty jobs of different minutes on one press, due one after the other. */
  private static OnePress thirty() {
    return thirty(0);
  }

  /** The same with so many minutes more before each due time. */
  private static OnePress thirty(int moreMin) {
    OnePress press = new OnePress().days(14);
    int at = START;
    for (int i = 0; i < 30; i++) {
      int minutes = 200 + 37 * (i % 7);
      at += minutes;
      press.job("J" + i, START, at + 90 + moreMin, minutes);
    }
    return press;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void withoutLuckAPlainWeekIsThePlanToTheMinuteAndTheMoney(long seed) {
    isThePlan(Plans.of(DrawnWeeks.plain(seed), 40, seed));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void withoutLuckAnArrangedWeekIsThePlanToTheMinuteAndTheMoney(long seed) {
    isThePlan(Plans.of(DrawnWeeks.arranged(seed), 40, seed));
  }

  private static void isThePlan(Plan plan) {
    Stressed.AsPlanned found = Stress.asPlanned(plan);
    assertThat(found.otherRuns()).isZero();
    assertThat(found.cost()).isEqualTo(plan.figures().avoidableCost());
    assertThat(found.lateMin()).isEqualTo(plan.figures().lateMin());
    assertThat(found.onTimeLines())
        .isEqualTo(plan.figures().placedLines() - plan.figures().lateLines());
  }

  @Test
  void theSameSeedGivesTheSameOnAnyNumberOfThreads() {
    Plan plan = Plans.of(DrawnWeeks.arranged(5), 40, 5);
    Stressed one = stress(plan, 96, 1);
    assertThat(stress(plan, 96, 1)).isEqualTo(one);
    assertThat(stress(plan, 96, 3)).isEqualTo(one);
    Stressed other =
        new Stress(LUCK, new Stress.Asked(96, 2, 1)).of(plan, Optional.empty(), List.of());
    assertThat(other.totals()).isNotEqualTo(one.totals());
  }

  @Test
  void moreReplaysBeginWithTheSameOnes() {
    Replays replays = OnePress.replays(Plans.of(DrawnWeeks.arranged(5), 40, 5), 1);
    Outcome few = replays.of(Situation.of(LUCK), 20, true);
    Outcome more = replays.of(Situation.of(LUCK), 50, false);
    for (int r = 0; r < few.replays(); r++) {
      assertThat(more.cost[r]).isEqualTo(few.cost[r]);
      assertThat(more.lateMin[r]).isEqualTo(few.lateMin[r]);
    }
  }

  @Test
  void withoutBreakdownsNoReplayOfOnePressIsLater() {
    Replays replays = OnePress.replays(thirty().plan(), 1);
    Outcome with = replays.of(Situation.of(LUCK), 500, false);
    Uncertainty never = LUCK.withBreakdown(Breakdown.NONE);
    Outcome without = replays.of(Situation.of(never), 500, false);
    int fewer = 0;
    for (int r = 0; r < with.replays(); r++) {
      assertThat(without.lateMin[r]).isLessThanOrEqualTo(with.lateMin[r]);
      fewer += without.lateMin[r] < with.lateMin[r] ? 1 : 0;
    }
    assertThat(fewer).isGreaterThan(400);
  }

  /** On one press without changes the last run ends when all have run, in whatever order. */
  @Test
  void theLuckOfALineIsTheSameInAnyOrder() {
    OnePress press = thirty();
    List<String> order = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      order.add("J" + i + "/1");
    }
    Uncertainty luck = LUCK.withBreakdown(Breakdown.NONE);
    Outcome forth = OnePress.replays(press.plan(order), 1).of(Situation.of(luck), 50, true);
    Collections.reverse(order);
    Outcome back = OnePress.replays(press.plan(order), 1).of(Situation.of(luck), 50, true);
    for (int r = 0; r < 50; r++) {
      // the change before the first run belongs to another line, and takes other minutes
      int changeForth = forth.ready[0][r] - START - forth.extra[0][r];
      int changeBack = back.ready[0][r] - START - back.extra[0][r];
      assertThat(back.ready[29][r] - changeBack).isEqualTo(forth.ready[29][r] - changeForth);
    }
  }

  @Test
  void aLateDeliveryHoldsUpTheRunThatNeedsIt() {
    OnePress press = new OnePress();
    press
        .plant()
        .stock(List.of(lot("I1", 40)), List.of(new Receipt("I1", 500, START + 600, START + 600)))
        .job(
            JobBuilder.job("1")
                .takes(new Take("I1", 100, 0, 0))
                .due(START + 5 * DAY)
                .on("P1", "M1", 300));
    Plan plan = OnePress.plan(press.plant().build(), List.of("1/1"));
    Uncertainty late = Uncertainty.NONE.withReceipts(new LateReceipts(100, 1));
    Outcome outcome = OnePress.replays(plan, 1).of(Situation.of(late), 200, true);
    for (int r = 0; r < 200; r++) {
      int there = START + 600 + outcome.late[0][r] + 30;
      assertThat(outcome.ready[0][r]).isEqualTo(there + 300);
    }
    Stressed all = stress(plan, 200, 1);
    assertThat(gain(all, Gain.Kind.RECEIPTS).fewerLateHours().mean()).isNotNegative();
    assertThat(gain(all, Gain.Kind.EARLIER).moreOnTime().mean()).isNotNegative();
  }

  private static Lot lot(String what, int onHand) {
    return new Lot(
        what, "L1", "B1", onHand, 0, java.util.OptionalInt.empty(), LotStatus.USABLE, "");
  }

  private static Gain gain(Stressed stressed, Gain.Kind kind) {
    return stressed.gains().stream().filter(g -> g.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void theWeakestPressIsTheOneThatBreaksDown() {
    Problem problem = thirty().plant().build();
    List<String> order = new ArrayList<>();
    problem.jobs().forEach(j -> order.add(j.id()));
    Uncertainty one = Uncertainty.NONE.withBreakdown(Breakdown.NONE);
    Uncertainty luck =
        one.withBreakdowns(
                Breakdown.NONE,
                List.of(new Uncertainty.PressBreakdown("P1", new Breakdown(10, 60, 50))))
            .withEffort(OnePress.EFFORT);
    Stressed found =
        new Stress(luck, new Stress.Asked(200, 1, 1))
            .of(OnePress.plan(problem, order), Optional.empty(), List.of());
    List<Gain> links = found.gains().stream().filter(g -> !g.kind().isWhole()).toList();
    assertThat(links).extracting(Gain::kind).containsOnly(Gain.Kind.PRESS);
    assertThat(links).extracting(Gain::what).containsExactly("P1");
    assertThat(links.get(0).moreOnTime()).isEqualTo(gain(found, Gain.Kind.BREAKDOWNS).moreOnTime());
    assertThat(links.get(0).moreOnTime().isSure()).isTrue();
  }

  @Test
  void aPlanIsAsGoodAsItself() {
    Plan plan = thirty().plan();
    Stressed found =
        new Stress(LUCK, new Stress.Asked(64, 1, 1)).of(plan, Optional.of(plan), List.of());
    assertThat(found.rival()).isPresent();
    assertThat(found.rival().get().onTimeLines().mean()).isZero();
    assertThat(found.rival().get().onTimeLines().isSure()).isFalse();
    assertThat(found.rival().get().better().hits()).isZero();
    assertThat(found.rival().get().totals()).isEqualTo(found.totals());
  }

  @Test
  void aLineThatIsDueInTimeIsSureAndOneThatIsNotIsNot() {
    Plan plan =
        new OnePress()
            .job("1", START, START + 5 * DAY, 300)
            .job("2", START, START + 300, 300)
            .plan();
    Stressed found = stress(plan, 100, 1);
    assertThat(found.lines().get(0).line()).isEqualTo("2/1");
    assertThat(found.lines().get(0).onTime().hits()).isZero();
    assertThat(found.lines().get(0).lateHours()).isGreaterThan(5);
    assertThat(found.lines().get(1).onTime().hits()).isEqualTo(100);
    assertThat(found.lines().get(1).lateHours()).isZero();
  }

  /** What slack brings is what the same replays come to where all is due so much later. */
  @Test
  void moreTimeBringsWhatTheSamePlanWithLaterDueTimesHas() {
    Stressed found = stress(thirty().plan(), 200, 1);
    assertThat(found.slack()).extracting(SlackGain::minutes).containsExactly(60, 240, 1440);
    for (SlackGain gain : found.slack()) {
      Stressed later = stress(thirty(gain.minutes()).plan(), 200, 1);
      assertThat(gain.moreOnTime().mean())
          .isCloseTo(mean(later, found, t -> t.onTimeLines().mean()), within(1e-9));
      assertThat(gain.fewerLateHours().mean())
          .isCloseTo(-mean(later, found, t -> t.lateHours().mean()), within(1e-9));
      assertThat(gain.sureLines())
          .isEqualTo(later.lines().stream().filter(l -> l.onTime().hits() >= 180).count());
      assertThat(gain.plannedLines())
          .isEqualTo(later.lines().stream().filter(l -> l.plannedMin() <= l.dueMin()).count());
    }
    assertThat(found.slack().get(0).moreOnTime().low()).isPositive();
    assertThat(found.slack().get(2).moreOnTime().mean())
        .isGreaterThan(found.slack().get(0).moreOnTime().mean());
  }

  private static double mean(Stressed of, Stressed than, ToDoubleFunction<Totals> figure) {
    return figure.applyAsDouble(of.totals()) - figure.applyAsDouble(than.totals());
  }

  /** With a minute less than the slack a line needs it is not on time as often as wanted. */
  @ParameterizedTest
  @ValueSource(doubles = {50, 90, 92.5, 99.9, 100})
  void theSlackALineNeedsIsTheLeastThatMakesItSure(double surePct) {
    int replays = 200;
    OnePress week = thirty();
    Uncertainty luck = LUCK.withAim(new Aim(surePct, List.of()));
    Stressed found =
        new Stress(luck, new Stress.Asked(replays, 1, 1))
            .of(week.plan(), Optional.empty(), List.of());
    assertThat(found.slack()).isEmpty();
    Outcome outcome = OnePress.replays(week.plan(), 1).of(Situation.of(luck), replays, true);
    List<String> ids = week.plan().runs().stream().map(Run::job).toList();
    for (LineChance line : found.lines()) {
      int[] ready = outcome.ready[ids.indexOf(line.line())];
      int due = line.dueMin() + line.slackNeededMin();
      assertThat(onTime(ready, due)).isGreaterThanOrEqualTo(surePct * replays / 100);
      assertThat(onTime(ready, due - 1)).isLessThan(surePct * replays / 100);
    }
    assertThat(found.lines()).anyMatch(l -> l.slackNeededMin() > 0);
  }

  private static double onTime(int[] ready, int due) {
    return Arrays.stream(ready).filter(r -> r <= due).count();
  }

  @Test
  void workGoesOnAfterTheHorizonForAsLongAsThePlantSays() {
    Plan plan = Plans.of(DrawnWeeks.arranged(5), 40, 5);
    Uncertainty slow = LUCK.withCycle(new Spread(300, 8));
    Totals some = totals(plan, slow, 21);
    assertThat(totals(plan, slow, 60)).isEqualTo(some);
    assertThat(totals(plan, slow, 0).cost()).isNotEqualTo(some.cost());
  }

  private static Totals totals(Plan plan, Uncertainty luck, int daysOn) {
    Uncertainty with = luck.withEffort(new Uncertainty.Effort(daysOn, 0, 1, 20, 90));
    return new Stress(with, new Stress.Asked(50, 1, 1)).totals(plan);
  }

  @Test
  void thePlantSaysHowManyOfAKindAreTriedAndHowOften() {
    Uncertainty few = LUCK.withEffort(new Uncertainty.Effort(21, 1, 30 * 120, 20, 90));
    Stressed found =
        new Stress(few, new Stress.Asked(200, 1, 1))
            .of(thirty().plan(), Optional.empty(), List.of());
    assertThat(found.luck().tried()).isEqualTo(120);
    assertThat(found.gains().stream().filter(g -> g.kind() == Gain.Kind.RUN)).hasSize(1);
  }

  @Test
  void whatIsStoppedSaysSo() {
    Stress stress = new Stress(LUCK, new Stress.Asked(50, 1, 1));
    stress.stop();
    assertThatThrownBy(() -> stress.totals(thirty().plan()))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("stopped while replaying");
  }
}
