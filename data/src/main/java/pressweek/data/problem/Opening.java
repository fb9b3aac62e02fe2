package pressweek.data.problem;

import java.util.List;

/**
 * Shifts that are not worked as others are.
 *
 * @param overtime shifts that are worked only on days on which a plan opens them
 * @param unattended names of shifts without people, in which only runs without hand loading go on
 */
public record Opening(List<Overtime> overtime, List<String> unattended) {
  /** A plant where every shift is worked, with people. */
  public static final Opening NONE = new Opening(List.of(), List.of());

  public Opening {
    overtime = List.copyOf(overtime);
    unattended = List.copyOf(unattended);
  }

  /**
   * A shift that may be opened.
   *
   * @param shift name of the shift
   * @param perHour what an hour of it costs, thousandths of a cent
   */
  public record Overtime(String shift, long perHour) {}
}
