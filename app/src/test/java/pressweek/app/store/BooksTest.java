package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.app.store.Given.ANNA;
import static pressweek.app.store.Given.BERT;
import static pressweek.app.store.Given.TEN;
import static pressweek.app.store.Given.done;
import static pressweek.app.store.Given.state;
import static pressweek.app.store.Given.takingBack;
import static pressweek.app.store.Given.tick;
import static pressweek.app.store.Given.uuid;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Body;
import pressweek.app.store.row.DeskState;
import pressweek.app.store.row.Entry;
import pressweek.app.store.row.FileMark;
import pressweek.app.store.row.FloorNote;
import pressweek.app.store.row.GivenPlan;
import pressweek.app.store.row.Scenario;
import pressweek.app.store.row.Session;
import pressweek.app.store.row.Tick;
import pressweek.app.store.row.User;

/** What each book promises, the desk among them, whichever database is under it. */
abstract class BooksTest extends DeskStatesTest {
  @Test
  void plansAreGivenOutOnce() throws StoreTrouble {
    GivenPlan first = new GivenPlan("2026-W49/1", Body.of("one"), ANNA);
    GivenPlan second = new GivenPlan("2026-W49/2", Body.of("two"), BERT);
    assertThat(store.plans().latest()).isEmpty();
    assertThat(done(store.plans().give(first))).isEqualTo(first);
    done(store.plans().give(second));
    done(store.plans().give(first));

    assertThat(store.plans().latest()).contains(second);
    assertThat(store.plans().byNumber("2026-W49/1")).contains(first);
    assertThat(store.plans().byNumber("2026-W49/3")).isEmpty();
    assertThat(store.plans().heads(10))
        .containsExactly(
            new GivenPlan.Head("2026-W49/2", BERT), new GivenPlan.Head("2026-W49/1", ANNA));
    assertThat(store.history().about("plan 2026-W49/1", 10)).hasSize(1);
    assertThat(store.plans().give(new GivenPlan("2026-W49/1", Body.of("other"), BERT)))
        .isEqualTo(new Answer.Stale<>(1, "gave out another plan 2026-W49/1", "Anna", ANNA.at()));
  }

  @Test
  void aTickSentAgainChangesNothing() throws StoreTrouble {
    Ticks ticks = store.ticks();
    assertThat(ticks.add(List.of(tick(1, "P1", 300), tick(2, "P2", 40))))
        .containsExactly(uuid(1), uuid(2));
    assertThat(ticks.add(List.of(tick(1, "P1", 999), tick(3, "P3", 5)))).containsExactly(uuid(3));
    assertThat(ticks.standing(List.of("P1", "P2", "P4")))
        .isEqualTo(Map.of("P1", tick(1, "P1", 300), "P2", tick(2, "P2", 40)));
    assertThat(ticks.latest(2)).containsExactly(tick(3, "P3", 5), tick(2, "P2", 40));
    assertThat(store.history().about("pull P1", 10)).hasSize(1);
  }

  @Test
  void aTickTakenBackGivesWayToTheOneBefore() throws StoreTrouble {
    Ticks ticks = store.ticks();
    ticks.add(List.of(tick(1, "P1", 300), tick(2, "P1", 250), takingBack(3, "P1", 2)));
    assertThat(ticks.standing(List.of("P1")).get("P1").pieces()).isEqualTo(300);
    // Taken back before it arrives, as when a tablet sends in two goes.
    ticks.add(List.of(takingBack(5, "P1", 4)));
    ticks.add(List.of(tick(4, "P1", 200)));
    ticks.add(List.of(takingBack(6, "P1", 1)));
    assertThat(ticks.standing(List.of("P1"))).isEmpty();
    assertThat(ticks.latest(10)).hasSize(6);
  }

  @Test
  void manyPullsAreAskedAtOnce() throws StoreTrouble {
    List<Tick> all = IntStream.range(0, 1_234).mapToObj(i -> tick(i, "P" + i, i)).toList();
    store.ticks().add(all);
    List<String> keys = all.stream().map(Tick::pull).toList();
    assertThat(store.ticks().standing(keys).values()).containsExactlyInAnyOrderElementsOf(all);
    assertThat(store.ticks().standing(List.of())).isEmpty();
  }

  @Test
  void floorNotesAreTakenIntoOnePlan() throws StoreTrouble {
    FloorNote.Event away =
        new FloorNote.Event(
            "press-away", "H4", Optional.of(TEN), Optional.empty(), OptionalInt.empty(), "heater");
    FloorNote.Event count =
        new FloorNote.Event(
            "count", "R7", Optional.empty(), Optional.of(TEN), OptionalInt.of(40), "");
    List<Long> ids = store.floorNotes().add(List.of(away, count), ANNA);
    assertThat(store.floorNotes().open())
        .containsExactly(
            new FloorNote(ids.get(0), away, "Anna", TEN, Optional.empty()),
            new FloorNote(ids.get(1), count, "Anna", TEN, Optional.empty()));
    assertThat(store.floorNotes().takeInto("2026-W49/2", ids.subList(0, 1), BERT)).isEqualTo(1);
    assertThat(store.floorNotes().takeInto("2026-W49/3", ids, BERT)).isEqualTo(1);
    assertThat(store.floorNotes().open()).isEmpty();
    assertThat(store.floorNotes().latest(1).get(0).planNumber()).contains("2026-W49/3");
  }

  @Test
  void scenariosAreNotOverwrittenUnseen() throws StoreTrouble {
    Scenarios scenarios = store.scenarios();
    Scenario first = done(scenarios.put(new Scenario("third shift", 0, "{}", ANNA)));
    assertThat(first.version()).isEqualTo(1);
    Scenario second = done(scenarios.put(new Scenario("third shift", 1, "{\"a\":1}", BERT)));
    assertThat(scenarios.find("third shift")).contains(second);
    Answer.Stale<Scenario> stale =
        new Answer.Stale<>(2, "wrote scenario third shift", "Bert", BERT.at());
    assertThat(scenarios.put(new Scenario("third shift", 1, "{}", ANNA))).isEqualTo(stale);
    assertThat(scenarios.put(new Scenario("third shift", 0, "{}", ANNA))).isEqualTo(stale);
    assertThat(scenarios.delete("third shift", 1, ANNA)).isEqualTo(stale);
    done(scenarios.put(new Scenario("A press more", 0, "{}", ANNA)));
    assertThat(scenarios.all())
        .extracting(Scenario::name)
        .containsExactly("A press more", "third shift");
    assertThat(done(scenarios.delete("third shift", 2, ANNA))).isEqualTo(second);
    assertThat(scenarios.put(new Scenario("third shift", 2, "{}", ANNA)))
        .isInstanceOf(Answer.Nothing.class);
  }

  @Test
  void usersComeAndChange() throws StoreTrouble {
    Users users = store.users();
    User hana = new User("Hana", "HANDLER", "hash 1", false);
    assertThat(users.add(hana, ANNA)).isTrue();
    assertThat(users.add(new User("Hana", "SETTER", "hash 2", false), ANNA)).isFalse();
    assertThat(users.find("Hana")).contains(hana);
    store.sessions().open("token", new Session("Hana", "csrf", TEN.plusSeconds(100)));
    users.put(hana, ANNA);
    assertThat(store.sessions().find("token", TEN)).isPresent();
    users.put(new User("Hana", "SETTER", "hash 2", true), BERT);
    assertThat(store.sessions().find("token", TEN)).isEmpty();
    assertThat(users.all()).containsExactly(new User("Hana", "SETTER", "hash 2", true));
    assertThat(store.history().about("user Hana", 10))
        .extracting(Entry::what)
        .containsExactly(
            "changed user Hana: role HANDLER to SETTER, a new password, away",
            "added user Hana (HANDLER)");
  }

  @Test
  void sessionsExpire() throws StoreTrouble {
    Sessions sessions = store.sessions();
    Session session = new Session("Hana", "csrf", TEN.plusSeconds(100));
    sessions.open("token", session);
    assertThat(sessions.find("token", TEN)).contains(session);
    assertThat(sessions.find("another", TEN)).isEmpty();
    assertThat(sessions.find("token", TEN.plusSeconds(100))).isEmpty();
    sessions.extend("token", TEN.plusSeconds(200));
    assertThat(sessions.find("token", TEN.plusSeconds(100))).isPresent();
    assertThat(sessions.purge(TEN.plusSeconds(199))).isZero();
    assertThat(sessions.purge(TEN.plusSeconds(200))).isEqualTo(1);
    sessions.open("token", session);
    sessions.close("token");
    assertThat(sessions.find("token", TEN)).isEmpty();
  }

  @Test
  void failedLoginsAreCounted() throws StoreTrouble {
    FailedLogins failed = store.failedLogins();
    failed.add("Hana", "10.0.0.7", TEN);
    failed.add("Hana", "10.0.0.8", TEN.plusSeconds(10));
    failed.add("Ivo", "10.0.0.8", TEN.plusSeconds(20));
    assertThat(failed.ofName("Hana", TEN)).isEqualTo(2);
    assertThat(failed.ofName("Hana", TEN.plusSeconds(1))).isEqualTo(1);
    assertThat(failed.ofAddress("10.0.0.8", TEN)).isEqualTo(2);
    failed.forget("Hana");
    assertThat(failed.ofName("Hana", TEN)).isZero();
    assertThat(failed.purge(TEN.plusSeconds(20))).isZero();
    assertThat(failed.purge(TEN.plusSeconds(21))).isEqualTo(1);
  }

  @Test
  void historyIsReadByThePage() throws StoreTrouble {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      store.history().add("did " + i, "papers", ANNA);
      all.add(0, "did " + i);
    }
    List<Entry> first = store.history().latest(4);
    List<Entry> second = store.history().before(first.get(3).id(), 4);
    assertThat(first).extracting(Entry::what).isEqualTo(all.subList(0, 4));
    assertThat(second).extracting(Entry::what).isEqualTo(all.subList(4, 7));
    assertThat(first.get(0).change()).isEqualTo(ANNA);
  }

  @Test
  void fileMarksSayWhatWasTakenLast() throws StoreTrouble {
    FileMarks marks = store.fileMarks();
    marks.take(Map.of("orders.csv", "aa", "molds.csv", "bb"), ANNA);
    marks.take(Map.of("orders.csv", "cc", "molds.csv", "bb"), BERT);
    assertThat(marks.latest())
        .isEqualTo(
            Map.of(
                "orders.csv", new FileMark("orders.csv", "cc", "Bert", BERT.at()),
                "molds.csv", new FileMark("molds.csv", "bb", "Anna", TEN)));
    assertThat(store.history().about("file molds.csv", 10)).hasSize(1);
  }

  @Test
  void whatBelongsTogetherIsKeptOrLeftAsOne() throws StoreTrouble {
    done(store.deskStates().put(state("solved"), 0));
    Answer<DeskState> refused =
        store.together(
            () -> {
              store.fileMarks().take(Map.of("orders.csv", "aa"), ANNA);
              assertThat(store.fileMarks().latest()).hasSize(1);
              return store.deskStates().put(state("read files"), 0);
            });
    assertThat(refused).isInstanceOf(Answer.Stale.class);
    assertThat(store.fileMarks().latest()).isEmpty();
    assertThat(store.history().latest(10)).hasSize(1);

    Answer<DeskState> kept =
        store.together(
            () -> {
              store.fileMarks().take(Map.of("orders.csv", "aa"), ANNA);
              return store.deskStates().put(state("read files"), 1);
            });
    assertThat(done(kept).version()).isEqualTo(2);
    assertThat(store.fileMarks().latest()).hasSize(1);
  }
}
