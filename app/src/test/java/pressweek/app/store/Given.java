package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Body;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.NewState;
import pressweek.app.store.row.Tick;

/** What the tests of the store put into it. */
final class Given {
  static final Instant TEN = Instant.parse("2026-11-30T10:00:00.123Z");
  static final Change ANNA = new Change("Anna", TEN, "mold is back");
  static final Change BERT = Change.of("Bert", TEN.plusSeconds(60));

  private Given() {}

  static NewState state(String what) {
    return new NewState("2026-W49/1", Body.of("week after " + what), what, ANNA);
  }

  static Tick tick(int id, String pull, int pieces) {
    return tick(id, pull, pieces, Optional.empty());
  }

  static Tick takingBack(int id, String pull, int undone) {
    return tick(id, pull, 0, Optional.of(uuid(undone)));
  }

  static UUID uuid(int id) {
    return new UUID(7, id);
  }

  private static Tick tick(int id, String pull, int pieces, Optional<UUID> undoes) {
    Tick.Stamp stamp = new Tick.Stamp("Hana", TEN, TEN.plusSeconds(5));
    return new Tick(uuid(id), pull, "2026-W49/1", pieces, 0, "", undoes, stamp);
  }

  /** What is there after a change that must have been made. */
  static <T> T done(Answer<T> answer) {
    assertThat(answer).isInstanceOf(Answer.Done.class);
    return ((Answer.Done<T>) answer).value();
  }
}
