package pressweek.data.week;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalInt;
import pressweek.data.files.PlantRow;
import pressweek.data.files.When;

/**
 * The plant's times as minutes since 1970 UTC.
 *
 * @param zone the plant's zone
 * @param cutOff shipping cut-off, which a due date without a time means
 * @param startMin first minute of the plan
 * @param endMin the horizon
 */
record PlantClock(ZoneId zone, LocalTime cutOff, int startMin, int endMin) {
  private static final int HOUR = 60;

  /** The clock of a plant; its plan starts when it says, else at the next full hour. */
  static PlantClock of(PlantRow plant, int nowMin) {
    ZoneId zone = plant.hours().zone();
    int nextHour = Math.floorDiv(nowMin + HOUR - 1, HOUR) * HOUR;
    int start =
        plant.hours().planStart().map(when -> when.minute(zone, LocalTime.MIN)).orElse(nextHour);
    long endSecond =
        Instant.ofEpochSecond(start * 60L)
            .atZone(zone)
            .plusDays(plant.hours().horizonDays())
            .toEpochSecond();
    return new PlantClock(zone, plant.shipping().cutOff(), start, Math.toIntExact(endSecond / 60));
  }

  /** A due time; a date alone is that day's shipping cut-off. */
  int due(When when) {
    return when.minute(zone, cutOff);
  }

  /** Any other time; a date alone is its 00:00. */
  int minute(When when) {
    return when.minute(zone, LocalTime.MIN);
  }

  OptionalInt minute(Optional<When> when) {
    return when.map(w -> OptionalInt.of(minute(w))).orElse(OptionalInt.empty());
  }

  /** A minute as people read it, for messages: local date and time. */
  String words(int minute) {
    return Instant.ofEpochSecond(minute * 60L)
        .atZone(zone)
        .toLocalDateTime()
        .toString()
        .replace('T', ' ');
  }
}
