package pressweek.app.web;

import java.util.List;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.desk.Standing;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.GivenPlan;
import pressweek.data.plan.Plan;
import pressweek.reports.handover.Handover;

/**
 * The plan that the floor has; while it has none, the week on the desk as a draft. It is read once
 * as long as it is the same. For use by several threads.
 */
final class Floor {
  /** What is said where there is no plan. */
  static final String NO_PLAN =
      "There is no plan yet: the page Files says what is wrong with the folder.";

  private final Desk desk;
  private Kept kept = new Kept("", Optional.empty());

  /** What was shown last, and of which plan that is. */
  private record Kept(String of, Optional<FloorPlan> plan) {}

  Floor(Desk desk) {
    this.desk = desk;
  }

  /** The plan that is shown; empty while there is none. */
  synchronized Optional<FloorPlan> shown() throws StoreTrouble {
    Optional<String> given =
        desk.store().plans().heads(1).stream().map(GivenPlan.Head::number).findFirst();
    if (given.isPresent()) {
      return given("given out " + given.get());
    }
    Optional<Standing> draft = desk.standing();
    if (draft.isEmpty()) {
      return Optional.empty();
    }
    String of = "draft " + draft.get().version();
    if (!of.equals(kept.of())) {
      Plan plan = draft.get().week().plan();
      FloorPlan floorPlan =
          new FloorPlan(plan, true, Handover.none(), draft.get().findings(), desk.nowMin());
      kept = new Kept(of, Optional.of(floorPlan));
    }
    return kept.plan();
  }

  private Optional<FloorPlan> given(String of) throws StoreTrouble {
    if (!of.equals(kept.of())) {
      Optional<Plan> plan = desk.lastGivenOut();
      kept = new Kept(of, plan.isPresent() ? Optional.of(floorPlan(plan.get())) : Optional.empty());
    }
    return kept.plan();
  }

  /** A plan is audited before it is given out. */
  private FloorPlan floorPlan(Plan plan) throws StoreTrouble {
    String replaces = plan.head().replaces();
    Optional<Plan> earlier = replaces.isEmpty() ? Optional.empty() : desk.givenOut(replaces);
    Handover handover = earlier.map(e -> Handover.between(e, plan)).orElse(Handover.none());
    return new FloorPlan(plan, false, handover, List.of(), desk.nowMin());
  }
}
