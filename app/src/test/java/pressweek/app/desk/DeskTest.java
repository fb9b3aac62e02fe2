package pressweek.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.solver.Watcher;
import pressweek.solver.why.Placement;

class DeskTest extends OnDesk {
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
    assertThat(store.fileMarks().latest().get("orders.csv").sha256())
        .isEqualTo(after.week().plan().head().inputs().get("orders.csv"));
  }

  @Test
  void filesOfAnotherWeekGiveThePlanANumberOfThatWeek() throws StoreTrouble, IOException {
    Path plant = this.plant.resolve("plant.json");
    String text = Files.readString(plant);
    assertThat(text).contains("2026-11-30");
    Files.writeString(plant, text.replace("2026-11-30", "2026-12-07"));
    assertThat(plan().head().number()).startsWith("2026-W49/");
    Standing after = done(desk.takeFiles(standing().version(), BEA));
    assertThat(after.week().plan().head().number()).startsWith("2026-W50/");
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
