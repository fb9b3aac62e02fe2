package pressweek.data.plan;

import java.util.List;
import java.util.Optional;

/**
 * What a plan decides for the plant as a whole and what that costs.
 *
 * @param opened overtime shifts that are worked, by start
 * @param held jobs that are held back on purpose until another has begun, or to the time that they
 *     had, in the order of the lines
 * @param dryings which dryer feeds which run, by start
 * @param charges charges that belong to no run: overtime, short campaigns, the close
 * @param bound how far the plan can be from the best possible; empty when nothing was proved
 */
public record PlantWide(
    List<Opened> opened,
    List<Held> held,
    List<DryerUse> dryings,
    List<Charge> charges,
    Optional<Bound> bound) {
  /** Nothing decided. */
  public static final PlantWide NONE =
      new PlantWide(List.of(), List.of(), List.of(), List.of(), Optional.empty());

  public PlantWide {
    opened = List.copyOf(opened);
    held = List.copyOf(held);
    dryings = List.copyOf(dryings);
    charges = List.copyOf(charges);
  }

  /**
   * An overtime shift that is worked.
   *
   * @param shift name of the shift
   * @param fromMin its first minute, since 1970 UTC
   * @param toMin first minute after it
   */
  public record Opened(String shift, int fromMin, int toMin) {}

  /**
   * A job that is held back on purpose.
   *
   * @param job the job, {@code order/line}
   * @param behind the job that has to begin before; the job itself when it keeps the time that it
   *     had in an earlier plan
   */
  public record Held(String job, String behind) {}

  /**
   * A dryer that feeds a run.
   *
   * @param run run number
   * @param dryer dryer
   * @param content what is in it
   * @param dryFromMin when drying begins; the start of the run when the content is dry already
   * @param toMin end of the run
   */
  public record DryerUse(String run, String dryer, String content, int dryFromMin, int toMin) {}
}
