package pressweek.reports.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;

class ReasonsTest {
  private static final String MONDAY = "2026-11-30T";

  private static int at(String time) {
    return SampleWeek.at(MONDAY + time);
  }

  private static PlanBook waiting(String due) {
    return PlanBook.of(
        new SmallPlan()
            .job("4711", "V1", due)
            .run("R1", "4711", "V1", MONDAY + "09:00", MONDAY + "12:00")
            .because(
                List.of(
                    new Wait(Cause.PRESS, "", at("06:00"), at("07:00")),
                    new Wait(Cause.SETTER, "", at("07:00"), at("07:30")),
                    new Wait(Cause.MOLD, "M1", at("07:30"), at("08:30")),
                    new Wait(Cause.SETTER, "", at("08:30"), at("09:00"))),
                List.of())
            .plan());
  }

  private static Run run(PlanBook book) {
    return book.run("R1").orElseThrow();
  }

  @Test
  void waitsOfOneCauseAreAddedUp() {
    assertThat(Reasons.waits(run(waiting(MONDAY + "22:00"))))
        .containsExactly(
            "press busy 60 min", "no setter free 60 min", "mold elsewhere (M1) 60 min");
  }

  @Test
  void remarksLeaveOutWhatTheScheduleShows() {
    assertThat(Reasons.remarks(run(waiting(MONDAY + "22:00"))))
        .containsExactly("no setter free for 1 h", "mold elsewhere (M1) for 1 h");
  }

  @Test
  void lateRunTellsItsWaitsInOrder() {
    PlanBook book = waiting(MONDAY + "10:00");
    assertThat(Reasons.late(book, run(book)))
        .containsExactly(
            "press busy for 1 h, until Mon 07:00",
            "no setter free for 30 min, until Mon 07:30",
            "mold elsewhere (M1) for 1 h, until Mon 08:30",
            "no setter free for 30 min, until Mon 09:00",
            "runs from Mon 09:00 to Mon 12:00");
  }

  @Test
  void lineDueBeforeThePlanSaysSo() {
    PlanBook book = waiting("2026-11-27T15:00");
    assertThat(Reasons.late(book, run(book)).get(0)).isEqualTo("was due before the plan starts");
    assertThat(book.lateMin(run(book))).isEqualTo(3 * 1_440 - 3 * 60);
  }
}
