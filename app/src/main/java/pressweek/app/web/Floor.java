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
  private Optional<FloorPlan> shown = Optional.empty();
  private String shownOf = "";

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
    if (!of.equals(shownOf)) {
      Plan plan = draft.get().week().plan();
      shown =
          Optional.of(
              new FloorPlan(
                  plan, true, Handover.none(), draft.get().findings(), desk.nowMin()));
      shownOf = of;
    }
    return shown;
  }

  private Optional<FloorPlan> given(String of) throws StoreTrouble {
    if (!of.equals(shownOf)) {
      Optional<Plan> plan = desk.lastGivenOut();
      shown = plan.isPresent() ? Optional.of(floorPlan(plan.get())) : Optional.empty();
      shownOf = of;
    }
    return shown;
  }

  /** A plan is audited before it is given out. */
  private FloorPlan floorPlan(Plan plan) throws StoreTrouble {
    String replaces = plan.head().replaces();
    Optional<Plan> earlier =
        replaces.isEmpty() ? Optional.empty() : desk.givenOut(replaces);
    Handover handover = earlier.map(e -> Handover.between(e, plan)).orElse(Handover.none());
    return new FloorPlan(plan, false, handover, List.of(), desk.nowMin());
  }
}
