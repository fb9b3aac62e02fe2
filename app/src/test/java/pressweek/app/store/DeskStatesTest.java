package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.app.store.Given.ANNA;
import static pressweek.app.store.Given.BERT;
import static pressweek.app.store.Given.done;
import static pressweek.app.store.Given.state;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Body;
import pressweek.app.store.row.DeskState;
import pressweek.app.store.row.Entry;

/** What the desk promises, whichever database is under it. */
abstract class DeskStatesTest {
  Store store;

  /** A database that has never been opened. */
  abstract String newTarget();

  @BeforeEach
  void open() throws StoreTrouble {
    store = Store.open(newTarget());
  }

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void deskIsEmptyAtFirst() throws StoreTrouble {
    assertThat(store.deskStates().current()).isEmpty();
    assertThat(store.deskStates().version()).isZero();
    assertThat(store.deskStates().undo(0, ANNA)).isInstanceOf(Answer.Nothing.class);
    assertThat(store.deskStates().redo(0, ANNA)).isInstanceOf(Answer.Nothing.class);
    assertThat(store.deskStates().prune(3)).isZero();
  }

  @Test
  void whatIsPutLiesOnTheDesk() throws StoreTrouble {
    DeskState put = done(store.deskStates().put(state("solved"), 0));
    assertThat(put.version()).isEqualTo(1);
    assertThat(put.planNumber()).isEqualTo("2026-W49/1");
    assertThat(put.body()).isEqualTo(Body.of("week after solved"));
    assertThat(put.made()).isEqualTo(ANNA);
    assertThat(put.undo()).isEmpty();
    assertThat(put.redo()).isEmpty();
    assertThat(store.deskStates().current()).contains(put);
  }

  @Test
  void undoAndRedoWalkTheStates() throws StoreTrouble {
    DeskStates desk = store.deskStates();
    DeskState solved = done(desk.put(state("solved"), 0));
    DeskState moved = done(desk.put(state("moved 4711/2"), 1));
    assertThat(moved.undo()).contains("moved 4711/2");

    DeskState undone = done(desk.undo(2, BERT));
    assertThat(undone.id()).isEqualTo(solved.id());
    assertThat(undone.version()).isEqualTo(3);
    assertThat(undone.redo()).contains("moved 4711/2");
    assertThat(desk.undo(3, BERT)).isInstanceOf(Answer.Nothing.class);

    DeskState redone = done(desk.redo(3, BERT));
    assertThat(redone.id()).isEqualTo(moved.id());
    assertThat(redone.body()).isEqualTo(moved.body());
    assertThat(desk.redo(4, BERT)).isInstanceOf(Answer.Nothing.class);
    assertThat(desk.version()).isEqualTo(4);
  }

  @Test
  void redoFollowsTheLatestBranch() throws StoreTrouble {
    DeskStates desk = store.deskStates();
    done(desk.put(state("solved"), 0));
    done(desk.put(state("moved"), 1));
    done(desk.undo(2, ANNA));
    done(desk.put(state("held"), 3));
    done(desk.undo(4, ANNA));
    assertThat(done(desk.redo(5, ANNA)).what()).isEqualTo("held");
  }

  @Test
  void aStaleVersionChangesNothingAndSaysWhoWasFaster() throws StoreTrouble {
    DeskStates desk = store.deskStates();
    done(desk.put(state("solved"), 0));
    done(desk.put(state("moved 4711/2"), 1));
    done(desk.undo(2, BERT));
    List<Entry> before = store.history().latest(100);

    Answer.Stale<DeskState> stale =
        new Answer.Stale<>(3, "took back: moved 4711/2", "Bert", BERT.at());
    assertThat(desk.put(state("held"), 2)).isEqualTo(stale);
    assertThat(desk.undo(2, ANNA)).isEqualTo(stale);
    assertThat(desk.redo(2, ANNA)).isEqualTo(stale);
    assertThat(desk.current().orElseThrow().what()).isEqualTo("solved");
    assertThat(store.history().latest(100)).isEqualTo(before);
  }

  @Test
  void pruningKeepsWhatCanBeReached() throws StoreTrouble {
    DeskStates desk = store.deskStates();
    for (int i = 0; i < 6; i++) {
      done(desk.put(state("step " + i), i));
    }
    done(desk.undo(6, ANNA));
    done(desk.put(state("other"), 7));
    done(desk.undo(8, ANNA));
    // On the desk: step 4. Back: 3, 2, 1, 0. Forward: other. Out of reach: step 5.
    assertThat(desk.prune(3)).isEqualTo(3);
    assertThat(done(desk.redo(9, ANNA)).what()).isEqualTo("other");
    done(desk.undo(10, ANNA));
    done(desk.undo(11, ANNA));
    assertThat(done(desk.undo(12, ANNA)).what()).isEqualTo("step 2");
    assertThat(desk.undo(13, ANNA)).isInstanceOf(Answer.Nothing.class);
    assertThat(desk.prune(3)).isEqualTo(1);
  }
}
