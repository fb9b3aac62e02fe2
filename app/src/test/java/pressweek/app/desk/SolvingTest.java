package pressweek.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import pressweek.app.plan.Replanner;
import pressweek.app.store.StoreTrouble;
import pressweek.data.files.At;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;

class SolvingTest extends OnDesk {
  @Test
  void aLineLeftOutStaysOutWhenTheWeekIsSolved()
      throws StoreTrouble, IOException, InterruptedException {
    String line = free().get(0).job();
    Standing out = done(desk.edit(standing().version(), new Edit.LeaveOut(line, "no film"), BEA));
    assertThat(out.week().plan().unplaced())
        .anyMatch(u -> u.id().equals(line) && u.reason().equals("left out by hand: no film"));
    Proposal found = solved(out.version());
    assertThat(found.findings()).isEmpty();
    assertThat(found.week().plan().runs()).extracting(Run::job).doesNotContain(line);
    assertThat(found.week().plan().problem().jobs()).anyMatch(j -> j.id().equals(line));
  }

  @Test
  void theSearchTakesTheTimeThatItIsGiven() throws StoreTrouble, IOException, InterruptedException {
    assertThat(plan().head().settings().seconds()).isNotEqualTo(1);
    Plan found = solved(standing().version()).week().plan();
    assertThat(found.head().settings()).isEqualTo(new Settings(1, 0, 1));
    assertThat(found.head().stopped()).isFalse();
  }

  private Proposal solved(long version) throws StoreTrouble, IOException, InterruptedException {
    CountDownLatch there = new CountDownLatch(1);
    desk.listen(
        event -> {
          if (event instanceof DeskEvent.Proposed) {
            there.countDown();
          }
        });
    try (Solving solving = new Solving(desk)) {
      assertThat(solving.solve(version, 1, "Bea")).isEmpty();
      there.await();
      return solving.proposal().orElseThrow();
    }
  }

  @Test
  void aProposalIsTakenOnlyForTheWeekItWasMadeFrom()
      throws StoreTrouble, IOException, InterruptedException {
    CountDownLatch there = new CountDownLatch(1);
    desk.listen(e -> there.countDown());
    try (Solving solving = new Solving(desk)) {
      assertThat(solving.solve(standing().version(), 1, "Bea")).isEmpty();
      assertThat(solving.solve(standing().version(), 1, "Carl"))
          .contains("Bea is solving the week already; stop that on the week wall, or wait");
      solving.stop();
      there.await();
      while (solving.going().isPresent()) {
        Thread.onSpinWait();
      }
      done(desk.edit(standing().version(), new Edit.Hold(free().get(0).job()), CARL));
      assertThat(solving.take(standing().version(), BEA)).isInstanceOf(Taken.Refused.class);
      solving.leave();
      assertThat(solving.proposal()).isEmpty();
    }
  }

  @Test
  void aRepairMovesWhatAPressHadAndIsAudited() throws StoreTrouble, IOException {
    Run run = free().get(0);
    int now = plan().problem().plant().hours().startMin();
    FloorEvent away =
        new FloorEvent(
            new At("events.csv", 2),
            EventKind.PRESS_AWAY,
            run.press(),
            now,
            now + 24 * 60,
            1,
            "broken");
    Replanner.Happened happened =
        new Replanner.Happened(List.of(away), List.of(), now, java.util.Map.of());
    CountDownLatch there = new CountDownLatch(1);
    desk.listen(
        e -> {
          if (e instanceof DeskEvent.Proposed) {
            there.countDown();
          }
        });
    try (Solving solving = new Solving(desk)) {
      assertThat(solving.repair(standing().version(), happened, 1, "Bea")).isEmpty();
      awaited(there);
      Proposal found = solving.proposal().orElseThrow();
      assertThat(found.findings()).isEmpty();
      assertThat(found.week().plan().runs())
          .noneMatch(r -> r.press().equals(run.press()) && r.startMin() < now + 24 * 60);
      Standing taken = done(solving.take(standing().version(), BEA));
      assertThat(taken.state().what()).isEqualTo("repaired the week");
      assertThat(store.floorNotes().open()).isEmpty();
      assertThat(store.floorNotes().latest(5))
          .singleElement()
          .satisfies(
              note -> {
                assertThat(note.event().kind()).isEqualTo("press-away");
                assertThat(note.event().what()).isEqualTo(run.press());
                assertThat(note.planNumber()).contains(taken.week().plan().head().number());
              });
    }
  }

  private static void awaited(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
