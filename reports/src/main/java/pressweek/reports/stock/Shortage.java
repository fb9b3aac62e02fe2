package pressweek.reports.stock;

import java.util.List;
import java.util.Optional;
import pressweek.data.problem.Component;
import pressweek.data.problem.Receipt;

/**
 * A component that runs short in the week.
 *
 * @param what its id
 * @param component what it is
 * @param words in words
 * @param runsOutMin when more is wanted for the first time than there is
 * @param pieces most that is missing at a time; grams where it is weighed
 * @param work what it holds up
 * @param cure the delivery with which there is enough; empty when none brings enough
 * @param supply what could be had beside
 */
record Shortage(
    String what,
    Component component,
    String words,
    int runsOutMin,
    long pieces,
    Work work,
    Optional<Receipt> cure,
    Supply supply) {
  /**
   * What it holds up.
   *
   * @param delays runs that wait for it
   * @param stops order lines that are unplaced for want of it
   */
  record Work(List<String> delays, List<String> stops) {
    Work {
      delays = List.copyOf(delays);
      stops = List.copyOf(stops);
    }
  }

  /**
   * What could be had.
   *
   * @param toOrder what is missing even when all deliveries are in
   * @param held pieces in lots that are held
   * @param alternatives parts that meet the same requirement, with their free stock
   */
  record Supply(long toOrder, long held, List<String> alternatives) {
    Supply {
      alternatives = List.copyOf(alternatives);
    }
  }
}
