package pressweek.data.problem;

import java.util.List;
import java.util.Optional;

/**
 * A week to plan: everything the planner may know, checked and in base units. Ids referred to
 * exist.
 *
 * @param plant the plant's own figures
 * @param floor presses and molds
 * @param materials resins, colours, inserts and stock
 * @param jobs order lines to place, in the order of the file
 * @param unplaced order lines that fell out before planning
 * @param notChecked what was not checked or was assumed, most important first
 * @param kitting what kits and their papers need beside; empty in plans that were made before there
 *     were kits
 * @param arrangements counted things, services, trials, links, overtime and more; empty in plans
 *     that were made before they were kept
 */
public record Problem(
    Plant plant,
    Floor floor,
    Materials materials,
    List<Job> jobs,
    List<Unplaced> unplaced,
    List<NotChecked> notChecked,
    Optional<Kitting> kitting,
    Optional<Arrangements> arrangements) {
  public Problem {
    jobs = List.copyOf(jobs);
    unplaced = List.copyOf(unplaced);
    notChecked = List.copyOf(notChecked);
  }

  /** A problem without further arrangements. */
  public Problem(
      Plant plant,
      Floor floor,
      Materials materials,
      List<Job> jobs,
      List<Unplaced> unplaced,
      List<NotChecked> notChecked,
      Optional<Kitting> kitting) {
    this(plant, floor, materials, jobs, unplaced, notChecked, kitting, Optional.empty());
  }

  /** What the plant has arranged beside; nothing in old plans. */
  public Arrangements arranged() {
    return arrangements.orElse(Arrangements.NONE);
  }

  /** The same problem with other arrangements. */
  public Problem with(Arrangements others) {
    return new Problem(
        plant, floor, materials, jobs, unplaced, notChecked, kitting, Optional.of(others));
  }

  /** The same problem of another plant. */
  public Problem with(Plant other) {
    return new Problem(other, floor, materials, jobs, unplaced, notChecked, kitting, arrangements);
  }

  /** The same problem with another floor. */
  public Problem with(Floor other) {
    return new Problem(plant, other, materials, jobs, unplaced, notChecked, kitting, arrangements);
  }

  /** The same problem with other materials. */
  public Problem with(Materials others) {
    return new Problem(plant, floor, others, jobs, unplaced, notChecked, kitting, arrangements);
  }

  /** The same problem with other jobs. */
  public Problem withJobs(List<Job> others) {
    return new Problem(
        plant, floor, materials, others, unplaced, notChecked, kitting, arrangements);
  }
}
