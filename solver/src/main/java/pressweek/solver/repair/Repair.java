package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.EventKind;
import pressweek.data.floor.Ended;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.Kitting;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.data.week.RushWeek;
import pressweek.solver.repair.Progress.Stage;

/**
 * Makes of a plan and what happened since the problem that is left: the week from the present on,
 * with presses as they stand, runs under way, the stock that is left and what is away. {@code
 * docs/floor-changes.md} says what is taken to be so where nobody said it.
 */
public final class Repair {
  private final Plan plan;
  private final Problem was;
  private final List<FloorEvent> events;
  private final int nowMin;
  private final FloorClock clock;
  private final Standing standing;
  private final LinesLeft lines;

  private Repair(Plan plan, List<FloorEvent> events, int nowMin) {
    this.plan = plan;
    this.was = plan.problem();
    this.events = events;
    this.nowMin = nowMin;
    clock = new FloorClock(plan, events, nowMin);
    standing = FloorWalk.of(plan, clock);
    lines = new LinesLeft(plan, events, clock, standing);
  }

  /**
   * What is left of a plan.
   *
   * @param plan the earlier plan; each of its runs makes a job of its problem
   * @param events what happened, all of it naming things of the plan
   * @param rush new order lines; empty for none
   * @param nowMin the present, minutes since 1970 UTC, from the plan's start to before its horizon
   */
  public static Repaired of(
      Plan plan, List<FloorEvent> events, Optional<RushWeek> rush, int nowMin) {
    Hours hours = plan.problem().plant().hours();
    if (nowMin < hours.startMin() || nowMin >= hours.endMin()) {
      throw new IllegalArgumentException("the present is outside the plan: " + nowMin);
    }
    return new Repair(plan, events, nowMin).repaired(rush);
  }

  private Repaired repaired(Optional<RushWeek> rush) {
    List<String> notes = new ArrayList<>();
    Set<String> brought = brought();
    Materials materials = StockLeft.of(plan, brought, events);
    lines.leftOver(brought);
    List<Job> jobs = lines.jobs();
    if (events.stream().anyMatch(e -> e.kind() == EventKind.LOT_HELD)) {
      jobs = Reserved.within(jobs, materials.stock().lots(), was.plant().hours().endMin());
    }
    List<Unplaced> unplaced = new ArrayList<>(lines.unplaced());
    Kitting kitting = was.kitting().orElse(Kitting.NONE);
    if (rush.isPresent()) {
      jobs = new ArrayList<>(jobs);
      jobs.addAll(rush.get().jobs());
      unplaced.addAll(rush.get().unplaced());
      materials = MaterialsMerge.of(materials, rush.get());
      kitting = MaterialsMerge.of(kitting, rush.get());
    }
    Problem left =
        new Problem(
            plant(),
            floor(notes),
            materials,
            jobs,
            unplaced,
            was.notChecked(),
            was.kitting().isPresent() || rush.isPresent() ? Optional.of(kitting) : Optional.empty(),
            Optional.of(arrangements(rush)));
    notes.addAll(lines.notes());
    notes.addAll(new RepairNotes(plan, events, standing, brought).all());
    List<Ended> ended = lines.ended();
    return new Repaired(left, ended, notes);
  }

  /** Runs whose pieces are at their press: those that have begun, or should have them by now. */
  private Set<String> brought() {
    int lead = was.plant().crew().insertLeadMin();
    Set<String> brought = new HashSet<>();
    for (Progress progress : standing.runs()) {
      Run run = progress.run();
      boolean begun = progress.stage() != Stage.WAITING && progress.stage() != Stage.CHANGING;
      boolean due = progress.stage() == Stage.CHANGING && run.startMin() - lead <= nowMin;
      if (begun || due) {
        brought.add(run.id());
      }
    }
    return brought;
  }

  private Plant plant() {
    Plant plant = was.plant();
    Hours hours = plant.hours();
    boolean crewed = events.stream().anyMatch(e -> e.kind() == EventKind.PERSON_AWAY);
    Hours left =
        new Hours(
            hours.zone(),
            nowMin,
            hours.endMin(),
            crewed ? CrewLeft.of(plan, events, nowMin) : hours.shifts(),
            hours.calendars(),
            hours.closed());
    return new Plant(
        plant.name(),
        OpenedLeft.of(left, plan.head().plantWide().opened()),
        plant.crew(),
        plant.shipping(),
        plant.rates(),
        plant.changes(),
        plant.moveToleranceMin(),
        plant.barrelDefaultG());
  }

  private Floor floor(List<String> notes) {
    FloorLeft left = new FloorLeft(plan, events, clock, standing);
    Floor floor = left.floor(lines.jobs());
    notes.addAll(left.notes());
    return floor;
  }

  private Arrangements arrangements(Optional<RushWeek> rush) {
    Arrangements left = new ArrangementsLeft(plan, clock, standing).left(lines.jobs());
    return rush.map(r -> MaterialsMerge.of(left, r)).orElse(left);
  }
}
