package pressweek.solver.offer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Job;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Unplaced;
import pressweek.solver.DrawnWeeks;
import pressweek.solver.Plans;
import pressweek.solver.StopSign;
import pressweek.solver.audit.Audit;
import pressweek.solver.repair.Repair;
import pressweek.solver.why.Reordering;

/**
 * Offers in a week that is worked out by hand, and in drawn weeks, in which the plan with the new
 * line is compared with the one without it line by line.
 *
 * <p>By hand: presses work round the clock from Monday 00:00 and the truck leaves at 15:00, minute
 * 900. On P1 the mold M1 is mounted and runs A, 600 minutes, due on Monday at 15:00, then B, 600
 * minutes, due on Tuesday at 15:00, with nothing to change between them. On P2 the mold M2 is
 * mounted and nothing runs.
 */
final class OfferingTest {
  private static final Settings FEW = new Settings(0, 20, 1);
  private static final int MONDAY = START + 15 * 60;
  private static final int TUESDAY = MONDAY + DAY;
  private static final int WEEKS = 12;

  private static SmallPlant byHand() {
    return new SmallPlant()
        .state(mounted("P1", "M1"))
        .state(mounted("P2", "M2"))
        .job(job("A").due(MONDAY).on("P1", "M1", 600))
        .job(job("B").due(TUESDAY).on("P1", "M1", 600));
  }

  private static PressState mounted(String press, String mold) {
    return new PressState(press, new Setup(mold, "", "PP", "BLK"), false, "");
  }

  private static Problem with(Problem problem, JobBuilder line) {
    List<Job> jobs = new ArrayList<>(problem.jobs());
    jobs.add(line.build());
    return problem.withJobs(jobs);
  }

  private static Offers offers(Problem problem, JobBuilder line, int needMin) {
    Basis basis = Basis.of(Plans.of(problem, 30, 1), problem, FEW, new StopSign());
    return Offering.of(basis, with(problem, line), needMin, FEW, new StopSign());
  }

  @Test
  void thePlanByHandIsTheOneThatIsMeant() {
    Plan plan = Plans.of(byHand().build(), 30, 1);
    assertThat(Plans.run(plan, "A").endMin()).isEqualTo(START + 600);
    assertThat(Plans.run(plan, "B").endMin()).isEqualTo(START + 1200);
    assertThat(plan.figures().avoidableCost()).isZero();
  }

  @Test
  void whatJustFitsBetweenIsReadyAtTheCutOffAndMovesOneRun() {
    Offers offers = offers(byHand().build(), job("N").on("P1", "M1", 300), MONDAY);
    Offer offer = offers.unharmed().orElseThrow();
    assertThat(offer.readyMin()).isEqualTo(MONDAY);
    assertThat(offer.promisedMin()).isEqualTo(MONDAY);
    assertThat(offer.price()).isEqualTo(new Price(List.of(), List.of(), Map.of(), 1));
    assertThat(Plans.run(offer.plan(), "N").startMin()).isEqualTo(START + 600);
    assertThat(offers.byNeed().orElseThrow().price().costsMore()).isZero();
  }

  @Test
  void oneMinuteMoreComesLastOrMakesTheFirstLineLateByAMinute() {
    Offers offers = offers(byHand().build(), job("N").on("P1", "M1", 301), MONDAY);
    Offer last = offers.unharmed().orElseThrow();
    assertThat(last.readyMin()).isEqualTo(START + 1501);
    assertThat(last.promisedMin()).isEqualTo(TUESDAY);
    assertThat(last.price()).isEqualTo(new Price(List.of(), List.of(), Map.of(), 0));
    Offer first = offers.byNeed().orElseThrow();
    assertThat(first.readyMin()).isEqualTo(START + 301);
    // A misses its cut-off, 100.00, and is late by one minute of a day at 60.00.
    long late = 10_000_000 + 6_000_000 / 1440;
    assertThat(first.price().byRule()).containsExactly(Map.entry(Rule.LATE, late));
    assertThat(first.price().later())
        .containsExactly(new Later("A/1", MONDAY, START + 600, OptionalInt.of(START + 901)));
    assertThat(first.price().later().get(0).laterMin()).hasValue(1);
    assertThat(first.harmsNobody()).isFalse();
  }

  @Test
  void aTimeThatCannotBeIsAnsweredByTheSoonestWithItsPrice() {
    Offers offers = offers(byHand().build(), job("N").on("P1", "M1", 301), START + 300);
    assertThat(offers.byNeed()).isEmpty();
    Offer soonest = offers.soonest().orElseThrow();
    assertThat(soonest.readyMin()).isEqualTo(START + 301);
    assertThat(soonest.promisedMin()).isEqualTo(MONDAY);
    assertThat(soonest.price().later()).hasSize(1);
    assertThat(soonest.price().costsMore()).isEqualTo(10_000_000 + 6_000_000 / 1440);
  }

  @Test
  void aFreePressPromisesAtOnce() {
    Offers offers = offers(byHand().build(), job("N").on("P2", "M2", 301), MONDAY);
    Offer offer = offers.unharmed().orElseThrow();
    assertThat(Plans.run(offer.plan(), "N").startMin()).isEqualTo(START);
    assertThat(offer.readyMin()).isEqualTo(START + 301);
    assertThat(offer.price()).isEqualTo(new Price(List.of(), List.of(), Map.of(), 0));
  }

  @Test
  void whatFindsNoPlaceSaysWhy() {
    Offers offers =
        offers(
            byHand().days(1).build(),
            job("N").on("P1", "M1", 90_000).earliest(START + 2 * DAY),
            MONDAY);
    assertThat(offers.soonest()).isEmpty();
    assertThat(offers.unharmed()).isEmpty();
    assertThat(offers.noPlace().orElseThrow().id()).isEqualTo("N/1");
    assertThat(offers.noPlace().orElseThrow().reason()).isNotBlank();
  }

  @Test
  void aProblemWithoutANewLineIsRefused() {
    Problem problem = byHand().build();
    Basis basis = Basis.of(Plans.of(problem, 30, 1), problem, FEW, new StopSign());
    assertThatThrownBy(() -> Offering.of(basis, problem, MONDAY, FEW, new StopSign()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void stoppedAtOnceItTriesNothingAndDoesNotSayThatThereIsNoPlace() {
    Problem problem = byHand().build();
    StopSign stop = new StopSign();
    stop.give();
    Basis basis = Basis.of(Plans.of(problem, 30, 1), problem, FEW, stop);
    Problem more = with(problem, job("N").on("P1", "M1", 301));
    Offers offers = Offering.of(basis, more, MONDAY, FEW, stop);
    assertThat(offers).isEqualTo(Offers.none(0, 0, true));
    assertThat(basis.cheapest()).isEqualTo(basis.standing());
  }

  @Test
  void stoppedAmidThePlacesItOffersTheBestOfThoseTried() {
    Problem problem = byHand().build();
    Basis basis = Basis.of(Plans.of(problem, 30, 1), problem, FEW, new StopSign());
    Problem more = with(problem, job("N").on("P1", "M1", 301));
    for (int places = 1; places <= 3; places++) {
      Offers offers = Offering.of(basis, more, MONDAY, FEW, after(places));
      assertThat(offers.tried()).isEqualTo(places);
      assertThat(offers.searches()).isZero();
      assertThat(offers.cutShort()).isTrue();
      // The first place makes A late, the second B no longer, the last one nobody.
      assertThat(offers.byNeed().orElseThrow().readyMin()).isEqualTo(START + 301);
      assertThat(offers.unharmed().isPresent()).isEqualTo(places > 1);
    }
    assertThat(Offering.of(basis, more, MONDAY, FEW, new StopSign()).cutShort()).isFalse();
  }

  @Test
  void placesAreThereBeforeAnythingIsSearchedFor() {
    Problem problem = byHand().build();
    Basis standing = Basis.standing(Plans.of(problem, 30, 1), problem);
    Problem more = with(problem, job("N").on("P1", "M1", 301));
    StopSign stop = new StopSign();
    Offering offering = Offering.placed(standing, more, MONDAY, stop);
    stop.give();
    assertThat(standing.searched(FEW, stop)).isEqualTo(standing);
    Offers offers = offering.offers(FEW);
    assertThat(offers.unharmed()).isPresent();
    assertThat(offers.searches()).isZero();
    assertThat(offers.cutShort()).isTrue();
  }

  /** A sign that stands once it has been asked so many times. */
  private static StopSign after(int times) {
    AtomicInteger asked = new AtomicInteger();
    return new StopSign(() -> asked.getAndIncrement() >= times);
  }

  @Test
  void inDrawnWeeksNobodyIsMadeLateLineByLine() {
    int unharmed = 0;
    int paid = 0;
    for (long seed = 1; seed <= WEEKS; seed++) {
      Problem problem = DrawnWeeks.arranged(seed);
      Basis basis = Basis.of(Plans.of(problem, 30, seed), problem, FEW, new StopSign());
      Plan standing = basis.standing();
      assertThat(standing.runs()).isEqualTo(Plans.of(problem, 30, seed).runs());
      Problem more = more(problem, (int) seed);
      int need = problem.plant().hours().startMin() + 2 * DAY;
      Offers offers = Offering.of(basis, more, need, FEW, new StopSign());
      offers.unharmed().ifPresent(o -> assertThat(lateness(o.plan(), standing)).isEmpty());
      unharmed += offers.unharmed().isPresent() ? 1 : 0;
      offers.byNeed().ifPresent(o -> assertThat(o.readyMin()).isLessThanOrEqualTo(need));
      for (Offer offer : all(offers)) {
        assertThat(Audit.check(offer.plan().problem(), offer.plan())).as("seed %d", seed).isEmpty();
        assertThat(offer.price().byRule()).isEqualTo(costs(offer.plan(), standing));
        assertThat(offer.price().later().stream().map(Later::line))
            .containsExactlyInAnyOrderElementsOf(lateness(offer.plan(), standing));
        paid += offer.harmsNobody() ? 0 : 1;
      }
    }
    assertThat(unharmed).isGreaterThan(WEEKS / 2);
    assertThat(paid).isPositive();
  }

  @Test
  void aLineWithoutAPlaceLosesNoneAndIsNamedWhereItFindsOne() {
    Problem problem = byHand().build();
    Plan plan = without(Plans.of(problem, 30, 1), "B");
    Basis basis = Basis.of(plan, problem, FEW, new StopSign());
    assertThat(jobs(basis.standing())).containsExactly("A/1");
    assertThat(basis.saves()).isPositive();
    Problem more = with(problem, job("N").on("P1", "M1", 301));
    Offers offers = Offering.of(basis, more, MONDAY, FEW, new StopSign());
    assertThat(all(offers)).isNotEmpty();
    for (Offer offer : all(offers)) {
      Price price = offer.price();
      assertThat(price.later().stream().map(Later::line)).doesNotContain("B/1");
      assertThat(price.placed().contains("B/1")).isEqualTo(jobs(offer.plan()).contains("B/1"));
      assertThat(price.byRule()).isEqualTo(costs(offer.plan(), basis.standing()));
    }
  }

  @Test
  void amidTheWeekTheBasisHasNoLineThatThePlanHasNoPlaceFor() {
    int left = 0;
    for (long seed = 1; seed <= WEEKS; seed++) {
      Problem problem = DrawnWeeks.plain(seed);
      Plan whole = Plans.of(problem, 30, seed);
      Optional<Run> last = whole.runs().stream().max(Comparator.comparingInt(Run::startMin));
      int now = problem.plant().hours().startMin() + DAY / 3;
      if (last.isEmpty() || last.get().startMin() <= now + DAY / 2) {
        continue;
      }
      Plan plan = without(whole, last.get().job());
      Problem rest = Repair.of(plan, List.of(), Optional.empty(), now).problem();
      assertThat(rest.jobs().stream().map(Job::id)).contains(last.get().job());
      Basis basis = Basis.of(plan, rest, FEW, new StopSign());
      assertThat(jobs(plan)).as("seed %d", seed).containsAll(jobs(basis.standing()));
      left++;
    }
    assertThat(left).isGreaterThan(WEEKS / 3);
  }

  /** The plan with a line left out, as if nobody had found a place for it. */
  private static Plan without(Plan plan, String line) {
    String job = line.contains("/") ? line : line + "/1";
    Job of = plan.problem().jobs().stream().filter(j -> j.id().equals(job)).findFirst().get();
    Unplaced left =
        new Unplaced(
            of.line().order(),
            of.line().line(),
            of.item().code(),
            of.quantity().good(),
            "no room",
            "more time");
    return new Reordering(plan).without(left);
  }

  private static List<String> jobs(Plan plan) {
    return plan.runs().stream().map(Run::job).sorted().toList();
  }

  private static List<Offer> all(Offers offers) {
    List<Offer> all = new ArrayList<>();
    offers.unharmed().ifPresent(all::add);
    offers.byNeed().ifPresent(all::add);
    offers.soonest().ifPresent(all::add);
    return all;
  }

  /** The week with one of its lines ordered once more. */
  private static Problem more(Problem problem, int which) {
    Job same = problem.jobs().get(which % problem.jobs().size());
    JobBuilder line = job("more").pieces(same.quantity().good()).in(same.resin(), same.colour());
    same.options().forEach(o -> line.on(o.press(), o.mold(), o.tooling(), o.pace().runMin()));
    return with(problem, line);
  }

  /** Lines that are later, or have lost their place, by their own due times. */
  private static List<String> lateness(Plan with, Plan without) {
    Map<String, Integer> due = new HashMap<>();
    without.problem().jobs().forEach(j -> due.put(j.id(), j.deadline().dueMin()));
    Map<String, Integer> ready = new HashMap<>();
    with.runs().forEach(r -> ready.put(r.job(), r.readyMin()));
    List<String> later = new ArrayList<>();
    for (Run run : without.runs()) {
      int limit = Math.max(due.getOrDefault(run.job(), 0), run.readyMin());
      if (ready.getOrDefault(run.job(), Integer.MAX_VALUE) > limit) {
        later.add(run.job());
      }
    }
    return later;
  }

  private static Map<Rule, Long> costs(Plan with, Plan without) {
    Map<Rule, Long> more = new EnumMap<>(Rule.class);
    for (Rule rule : Rule.values()) {
      long amount =
          with.figures().costByRule().getOrDefault(rule, 0L)
              - without.figures().costByRule().getOrDefault(rule, 0L);
      if (amount != 0) {
        more.put(rule, amount);
      }
    }
    return more;
  }
}
