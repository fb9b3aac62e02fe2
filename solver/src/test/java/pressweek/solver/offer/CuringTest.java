package pressweek.solver.offer;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.data.problem.SmallPlant.shift;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Job;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Opening;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.solver.Plans;
import pressweek.solver.StopSign;
import pressweek.solver.audit.Audit;
import pressweek.solver.offer.Help.Gain;

/**
 * What helps a new line, in weeks that are worked out by hand: presses work round the clock from
 * Monday 00:00, and the mold M1 is mounted on P1, where it runs A, 600 minutes, due on Monday at
 * 15:00.
 */
final class CuringTest {
  private static final Settings FEW = new Settings(0, 20, 1);
  private static final int MONDAY = START + 15 * 60;

  private static SmallPlant byHand() {
    return new SmallPlant()
        .state(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, ""))
        .job(job("A").due(MONDAY).on("P1", "M1", 600));
  }

  private static Cures cures(Problem problem, JobBuilder line, StopSign stop) {
    List<Job> jobs = new ArrayList<>(problem.jobs());
    jobs.add(line.build());
    Problem more = problem.withJobs(jobs);
    StopSign never = new StopSign();
    Basis basis = Basis.of(Plans.of(problem, 30, 1), problem, FEW, never);
    Offers offers = Offering.of(basis, more, MONDAY, FEW, never);
    return Curing.of(basis, more, offers, MONDAY, stop);
  }

  private static Cures cures(Problem problem, JobBuilder line) {
    return cures(problem, line, new StopSign());
  }

  private static Help help(Cures cures, String what) {
    List<Help> found = cures.helping().stream().filter(h -> h.what().equals(what)).toList();
    assertThat(found).as("%s", cures).hasSize(1);
    Offer offer = found.get(0).offer();
    assertThat(Audit.check(offer.plan().problem(), offer.plan())).isEmpty();
    return found.get(0);
  }

  @Test
  void aMoldThatIsBackBringsItInTimeWithNobodyLate() {
    Problem problem =
        byHand().away(new Downtime(Downtime.Kind.MOLD, "M2", START, START + DAY, "repair")).build();
    Help back = help(cures(problem, job("N").on("P2", "M2", 300)), "mold M2 back at once");
    assertThat(back.gain()).isEqualTo(Gain.IN_TIME);
    assertThat(back.offer().readyMin()).isLessThanOrEqualTo(MONDAY);
    assertThat(back.offer().harmsNobody()).isTrue();
    assertThat(Plans.run(back.offer().plan(), "N").press()).isEqualTo("P2");
  }

  @Test
  void aPressOfTheSameBuildThatIsQualifiedTakesIt() {
    // P1 runs A until 10:00 and has its mold to change; P3 is like it and free, P2 is not like it.
    Help qualified =
        help(
            cures(
                byHand().press(SmallPlant.horizontal("P3")).build(), job("N").on("P1", "M2", 400)),
            "press P3 qualified for mold M2, as P1 is");
    assertThat(qualified.gain()).isEqualTo(Gain.IN_TIME);
    assertThat(Plans.run(qualified.offer().plan(), "N").press()).isEqualTo("P3");
  }

  @Test
  void anOvertimeShiftThatIsOpenedIsCharged() {
    Opening opening = new Opening(List.of(new Opening.Overtime("extra", 6_000_000)), List.of());
    Problem problem =
        new SmallPlant()
            .state(new PressState("P1", new Setup("M1", "", "PP", "BLK"), false, ""))
            .shifts(shift("day", "00:00", "10:00"), shift("extra", "10:00", "15:00"))
            .job(job("A").due(MONDAY).on("P1", "M1", 600))
            .build();
    Help opened =
        help(
            cures(problem.with(Arrangements.NONE.with(opening)), job("N").on("P1", "M1", 300)),
            "overtime shift extra opened on 2026-11-30");
    assertThat(opened.gain()).isEqualTo(Gain.IN_TIME);
    assertThat(opened.offer().readyMin()).isEqualTo(MONDAY);
    assertThat(opened.offer().price().byRule()).containsEntry(Rule.OVERTIME, 5 * 6_000_000L);
  }

  @Test
  void whatDoesNotHelpIsNamedAmongTheTried() {
    Cures cures = cures(byHand().build(), job("N").on("P1", "M1", 301));
    assertThat(cures.helping()).isEmpty();
    assertThat(cures.tried()).contains("a second copy of mold M1").hasSize(cures.changes());
    assertThat(cures.places()).isPositive();
    assertThat(cures.cutShort()).isFalse();
  }

  @Test
  void stoppedAtOnceNothingIsTried() {
    StopSign given = new StopSign();
    given.give();
    Cures cures = cures(byHand().build(), job("N").on("P1", "M1", 301), given);
    assertThat(cures.changes()).isPositive();
    assertThat(cures.tried()).isEmpty();
    assertThat(cures.cutShort()).isTrue();
  }

  @Test
  void stoppedAmidItKeepsWhatItHas() {
    Problem problem =
        byHand().away(new Downtime(Downtime.Kind.MOLD, "M2", START, START + DAY, "repair")).build();
    JobBuilder line = job("N").on("P2", "M2", 300);
    Cures whole = cures(problem, line);
    int asked = 0;
    Cures cut = cures(problem, line, after(asked));
    while (cut.cutShort()) {
      assertThat(cut.tried()).isEqualTo(whole.tried().subList(0, cut.tried().size()));
      asked++;
      cut = cures(problem, line, after(asked));
    }
    assertThat(asked).isGreaterThan(whole.changes());
    assertThat(cut.helping()).hasSameSizeAs(whole.helping());
  }

  /** A sign that stands once it has been asked so many times. */
  private static StopSign after(int times) {
    AtomicInteger asked = new AtomicInteger();
    return new StopSign(() -> asked.getAndIncrement() >= times);
  }
}
