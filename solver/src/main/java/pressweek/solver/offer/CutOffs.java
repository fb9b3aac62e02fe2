package pressweek.solver.offer;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Shipping;

/** Shipping cut-offs, one of which a promise names. */
final class CutOffs {
  private static final int WEEK_DAYS = 7;

  private CutOffs() {}

  /**
   * The first cut-off at or after a minute; the minute itself for a plant without shipping days.
   */
  static int atOrAfter(Plant plant, int minute) {
    Shipping shipping = plant.shipping();
    ZoneId zone = plant.hours().zone();
    LocalDate day = Instant.ofEpochSecond(minute * 60L).atZone(zone).toLocalDate();
    for (int i = 0; i <= WEEK_DAYS; i++, day = day.plusDays(1)) {
      long second = day.atTime(shipping.cutOff()).atZone(zone).toEpochSecond();
      int cutOff = Math.toIntExact(Math.floorDiv(second, 60L));
      if (cutOff >= minute && shipping.days().contains(day.getDayOfWeek())) {
        return cutOff;
      }
    }
    return minute;
  }
}
