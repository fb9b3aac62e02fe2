package pressweek.data.week;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.OptionalInt;
import pressweek.data.files.LotRow;
import pressweek.data.problem.LotStatus;

/** Lots that a plant may count on and the plan does not, for their dates. */
final class LotChecks {
  private final PlantClock clock;
  private final Notes notes;

  LotChecks(PlantClock clock, Notes notes) {
    this.clock = clock;
    this.notes = notes;
  }

  void check(LotRow row) {
    OptionalInt expires = clock.minute(row.expires());
    if (row.status() != LotStatus.USABLE || expires.isEmpty()) {
      return;
    }
    int expiresMin = expires.getAsInt();
    OptionalInt received = clock.minute(row.received());
    String lot = "lot \"" + row.lot() + "\" of " + row.what();
    if (received.isPresent() && received.getAsInt() > expiresMin) {
      notes.warning(
          row.at(), "expires", lot + " expires before it was received; expected a later time");
    } else if (expiresMin <= clock.startMin()) {
      notes.warning(
          row.at(), "expires", lot + " had expired on " + day(expiresMin) + "; it is not used");
    } else if (!row.reservedFor().isEmpty() && expiresMin < clock.endMin()) {
      notes.warning(
          row.at(),
          "expires",
          lot
              + " is reserved and expires on "
              + day(expiresMin)
              + ", within the horizon; it is not counted");
    }
  }

  private String day(int minute) {
    return LocalDateTime.ofInstant(Instant.ofEpochSecond(60L * minute), clock.zone())
        .toLocalDate()
        .toString();
  }
}
