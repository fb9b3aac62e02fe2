package pressweek.app.store.row;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;

/**
 * A material handler's tick on a pull.
 *
 * @param id made by the tablet, so that a tick that is sent again is known again
 * @param pull key of the pull
 * @param planNumber the plan on which it stood
 * @param pieces pieces brought
 * @param shortPieces pieces missing
 * @param reason why they are missing; empty for none
 * @param undoes the earlier tick that this one takes back; empty for a tick of its own
 * @param stamp who ticked, and when
 */
public record Tick(
    UUID id,
    String pull,
    String planNumber,
    int pieces,
    int shortPieces,
    String reason,
    Optional<UUID> undoes,
    Stamp stamp) {
  public Tick {
    if (pieces < 0 || shortPieces < 0) {
      throw new IllegalArgumentException(
          "a tick has no fewer than 0 pieces but was " + pieces + ", short " + shortPieces);
    }
  }

  /**
   * Who ticked, and when by two clocks: a tablet without a connection sends later.
   *
   * @param by name of the person
   * @param client when, by the tablet's clock
   * @param server when it arrived; both to the millisecond
   */
  public record Stamp(String by, Instant client, Instant server) {
    public Stamp {
      client = client.truncatedTo(ChronoUnit.MILLIS);
      server = server.truncatedTo(ChronoUnit.MILLIS);
    }
  }
}
