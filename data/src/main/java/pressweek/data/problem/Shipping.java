package pressweek.data.problem;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Set;

/**
 * When the truck leaves.
 *
 * @param days days with a truck
 * @param cutOff local time by which an order must be ready
 */
public record Shipping(Set<DayOfWeek> days, LocalTime cutOff) {
  public Shipping {
    days = Set.copyOf(days);
  }
}
