package pressweek.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.plan.Replanner;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.data.files.At;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.PressState;
import pressweek.solver.Watcher;
import pressweek.solver.why.Placement;

class DeskTest {
  private static final Instant NOW = Instant.parse("2026-11-30T05:00:00Z");
  private static final Change BEA = Change.of("Bea", NOW);
  private static final Change CARL = Change.of("Carl", NOW);

  @TempDir private Path folder;

  private Path plant;
  private Store store;
  private Desk desk;

  @BeforeEach
  void planned() throws IOException, StoreTrouble {
    plant = Copied.example("quillback-small", folder.resolve("plant"));
    store = Store.open(folder.resolve("store.db").toString());
    desk = opened();
    desk.begin(new Settings(0, 60, 1), "Bea", Watcher.NONE);
  }

  private Desk opened() throws IOException {
    int nowMin = (int) (NOW.getEpochSecond() / 60);
    return new Desk(store, new FolderLook(plant, nowMin), Clock.fixed(NOW, ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    store.close();
  }

  private Standing standing() throws StoreTrouble, IOException {
    return desk.standing().orElseThrow();
  }

  private Plan plan() throws StoreTrouble, IOException {
    return standing().week().plan();
  }

  private List<Run> free() throws StoreTrouble, IOException {
    Plan plan = plan();
    List<Run> free = new ArrayList<>(plan.runs());
    free.removeIf(
        r -> plan.problem().floor().promises().stream().anyMatch(p -> p.job().equals(r.job())));
    free.removeIf(
        r ->
            plan.problem().floor().states().stream()
                .map(PressState::job)
                .anyMatch(r.job()::equals));
    return free;
  }

  private Standing done(Taken taken) {
    assertThat(taken).isInstanceOf(Taken.Done.class);
    return ((Taken.Done) taken).standing();
  }

  @Test
  void theWeekIsKeptAndFoundAgain() throws StoreTrouble, IOException {
    Standing before = standing();
    Desk again = opened();
    Standing after = again.standing().orElseThrow();
    assertThat(after.week()).isEqualTo(before.week());
    assertThat(after.version()).isEqualTo(before.version());
    assertThat(again.begin(new Settings(0, 60, 2), "Carl", Watcher.NONE)).contains(after);
  }

  @Test
  void aMoveDoesWhatItsTrialSaid() throws StoreTrouble, IOException {
    int tried = 0;
    for (Run run : free()) {
      Standing now = standing();
      List<Placement> places =
          desk.asked(hands -> hands.order().places(run.job(), 1)).orElseThrow();
      if (places.isEmpty()) {
        continue;
      }
      Placement place = places.get(0);
      Edit.Move move = new Edit.Move(run.job(), place.press(), place.spot());
      Trial trial = ((Desk.TrialAnswer.Yes) desk.tried(now.version(), move)).trial();
      assertThat(trial.costsMore()).isEqualTo(place.costsMore());
      Standing after = done(desk.edit(now.version(), move, BEA));
      assertThat(after.week().plan().figures()).isEqualTo(trial.tried().figures());
      assertThat(after.findings()).isEmpty();
      assertThat(after.week().plan().pulls()).isNotEmpty();
      tried++;
    }
    assertThat(tried).isGreaterThan(3);
  }

  @Test
  void twoPeopleNeverOverwriteEachOther() throws StoreTrouble, IOException {
    long version = standing().version();
    String line = free().get(0).job();
    Standing after = done(desk.edit(version, new Edit.LeaveOut(line, "no film"), BEA));
    Taken late = desk.edit(version, new Edit.LeaveOut(free().get(0).job(), ""), CARL);
    assertThat(late).isEqualTo(new Taken.Stale(after.version(), "left out " + line, "Bea", NOW));
    assertThat(standing().week()).isEqualTo(after.week());
  }

  @Test
  void undoAndRedoGoBackAndForth() throws StoreTrouble, IOException {
    DeskWeek first = standing().week();
    String line = free().get(0).job();
    DeskWeek second =
        done(desk.edit(standing().version(), new Edit.LeaveOut(line, ""), BEA)).week();
    assertThat(done(desk.undo(standing().version(), BEA)).week()).isEqualTo(first);
    assertThat(done(desk.redo(standing().version(), BEA)).week()).isEqualTo(second);
    assertThat(desk.redo(standing().version(), BEA)).isInstanceOf(Taken.Refused.class);
  }

  @Test
  void everyLineCanBeHeldAndReleased() throws StoreTrouble, IOException {
    for (Run run : free()) {
      Standing before = standing();
      Standing held = done(desk.edit(before.version(), new Edit.Hold(run.job()), BEA));
      assertThat(held.findings()).isEmpty();
      assertThat(held.week().marks().held()).contains(run.job());
      Run there =
          held.week().plan().runs().stream()
              .filter(r -> r.job().equals(run.job()))
              .findFirst()
              .orElseThrow();
      assertThat(there.press()).isEqualTo(run.press());
      done(desk.undo(held.version(), BEA));
    }
    String line = free().get(0).job();
    done(desk.edit(standing().version(), new Edit.Hold(line), BEA));
    assertThat(desk.edit(standing().version(), new Edit.LetGo(line), BEA))
        .isEqualTo(new Taken.Refused(line + " is not promised"));
    Standing released = done(desk.edit(standing().version(), new Edit.Release(line), BEA));
    assertThat(released.week().marks().held()).isEmpty();
  }

  @Test
  void whatIsPromisedOrRunningDoesNotMove() throws StoreTrouble, IOException {
    Run run = free().get(0);
    done(desk.edit(standing().version(), new Edit.Promise(run.job()), BEA));
    Taken moved = desk.edit(standing().version(), new Edit.Move(run.job(), run.press(), 0), BEA);
    assertThat(moved).isEqualTo(new Taken.Refused(run.job() + " is promised; let it go first"));
  }

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
          .contains("Bea is solving already; stop it or wait");
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
  void thePlanOfTheFloorIsTheOneThatWasGivenOutLast() throws StoreTrouble, IOException {
    assertThat(desk.lastGivenOut()).isEmpty();
    String first = plan().head().number();
    Standing given = done(desk.giveOut(standing().version(), BEA));
    assertThat(given.givenOut()).isTrue();
    assertThat(desk.giveOut(given.version(), BEA)).isInstanceOf(Taken.Refused.class);
    Standing next =
        done(desk.edit(given.version(), new Edit.LeaveOut(free().get(0).job(), ""), BEA));
    assertThat(next.givenOut()).isFalse();
    assertThat(next.week().plan().head().number()).isNotEqualTo(first);
    assertThat(next.week().plan().head().replaces()).isEqualTo(first);
    assertThat(desk.lastGivenOut().orElseThrow().head().number()).isEqualTo(first);
  }

  /**
   * Two parts need start-up inserts twice, so that not every line has enough for it; and finished
   * stock may be enough for one of them.
   */
  @Test
  void aLineIsSplitAndJoinedAgain() throws StoreTrouble, IOException {
    int both = 0;
    for (Run run : free()) {
      String line = run.job();
      int pieces = pieces(line);
      Standing split = done(desk.edit(standing().version(), new Edit.Split(line, pieces / 3), BEA));
      assertThat(split.findings()).isEmpty();
      List<String> jobs = split.week().plan().problem().jobs().stream().map(j -> j.id()).toList();
      assertThat(jobs).doesNotContain(line).anyMatch(j -> j.startsWith(line + "/"));
      if (jobs.contains(line + "/1") && jobs.contains(line + "/2")) {
        assertThat(pieces(line + "/1") + pieces(line + "/2")).isEqualTo(pieces);
      }
      List<String> runs = split.week().plan().runs().stream().map(Run::job).toList();
      assertThat(runs).doesNotContain(line);
      both += runs.contains(line + "/1") && runs.contains(line + "/2") ? 1 : 0;
      assertThat(desk.edit(split.version(), new Edit.Split(line, 1), BEA))
          .isInstanceOf(Taken.Refused.class);
      Standing kept = done(desk.takeFiles(split.version(), BEA));
      assertThat(kept.week().plan().problem().jobs()).hasSize(jobs.size());
      Standing joined = done(desk.edit(kept.version(), new Edit.Join(line), BEA));
      assertThat(joined.findings()).isEmpty();
      assertThat(pieces(line)).isEqualTo(pieces);
      assertThat(desk.edit(joined.version(), new Edit.Split(line, pieces), BEA))
          .isInstanceOf(Taken.Refused.class);
    }
    assertThat(both).isGreaterThan(1);
  }

  private int pieces(String line) throws StoreTrouble, IOException {
    return plan().problem().jobs().stream()
        .filter(j -> j.id().equals(line))
        .findFirst()
        .orElseThrow()
        .line()
        .quantity();
  }

  @Test
  void aChangedFileIsSaidAndTakenOnlyWhenAsked() throws StoreTrouble, IOException {
    assertThat(desk.filesChanged(standing())).isEmpty();
    Path orders = plant.resolve("orders.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(orders));
    String last = lines.remove(lines.size() - 1);
    Files.write(orders, lines);
    assertThat(desk.filesChanged(standing())).containsExactly("orders.csv changed");
    int before = plan().problem().jobs().size() + plan().problem().unplaced().size();
    Standing after = done(desk.takeFiles(standing().version(), BEA));
    int now =
        after.week().plan().problem().jobs().size()
            + after.week().plan().problem().unplaced().size();
    assertThat(now).as(last).isLessThan(before);
    assertThat(after.findings()).isEmpty();
    assertThat(desk.filesChanged(after)).isEmpty();
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
    }
  }

  private static void awaited(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void linesAndPressesThatAreNotThereAreRefusedInWords() throws StoreTrouble, IOException {
    long version = standing().version();
    assertThat(desk.edit(version, new Edit.Hold("none/1"), BEA))
        .isEqualTo(
            new Taken.Refused("line none/1 is not among those that can be planned this week"));
    String line = free().get(0).job();
    assertThat(desk.tried(version, new Edit.Move(line, "none", 0)))
        .isEqualTo(new Desk.TrialAnswer.No("the plant has no press none"));
    assertThat(desk.tried(version + 1, new Edit.Move(line, "none", 0)))
        .isEqualTo(new Desk.TrialAnswer.Old(version));
    assertThat(standing().version()).isEqualTo(version);
  }

  @Test
  void aFolderWithErrorsGivesNoWeek() throws StoreTrouble, IOException {
    Path broken = Copied.example("quillback-small", folder.resolve("broken"));
    Files.writeString(broken.resolve("presses.csv"), "press,orientation\nV1,sideways\n");
    try (Store other = Store.open(folder.resolve("other.db").toString())) {
      Desk none =
          new Desk(other, new FolderLook(broken, 29_000_000), Clock.fixed(NOW, ZoneOffset.UTC));
      assertThat(none.begin(new Settings(0, 10, 1), "Bea", Watcher.NONE))
          .isEqualTo(Optional.empty());
      assertThat(none.edit(0, new Edit.Hold("1/1"), BEA)).isInstanceOf(Taken.Refused.class);
    }
  }
}
