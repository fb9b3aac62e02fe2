package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Hours;

/** What a scheduler should know of how events were taken. */
final class RepairNotes {
  private static final int WEEK = 7 * 24 * 60;

  private final Plan plan;
  private final List<FloorEvent> events;
  private final Standing standing;
  private final Set<String> brought;

  RepairNotes(Plan plan, List<FloorEvent> events, Standing standing, Set<String> brought) {
    this.plan = plan;
    this.events = events;
    this.standing = standing;
    this.brought = brought;
  }

  List<String> all() {
    List<String> notes = new ArrayList<>();
    for (FloorEvent event : events) {
      if (event.kind() == EventKind.LOT_HELD) {
        held(event, notes);
      } else if (event.kind() == EventKind.PERSON_AWAY) {
        person(event, notes);
      }
    }
    for (Progress progress : standing.runs()) {
      if (progress.stage() == Progress.Stage.STOPPED) {
        notes.add(
            "the run of %s on %s has stopped; what is left of it is planned anew"
                .formatted(progress.run().job(), progress.run().press()));
      }
    }
    return notes;
  }

  private void held(FloorEvent event, List<String> notes) {
    for (Pull pull : plan.pulls()) {
      if (pull.lot().equals(event.what()) && brought.contains(pull.run())) {
        notes.add(
            "%s: %d of lot %s were brought to %s for %s before it was held; look at them there"
                .formatted(event.source(), pull.pieces(), pull.lot(), pull.press(), pull.run()));
      }
    }
  }

  private void person(FloorEvent event, List<String> notes) {
    Crew crew = plan.problem().plant().crew();
    if (!crew.settersChecked() && !crew.operatorsChecked()) {
      notes.add(event.source() + ": the plan does not count people; nothing changes by it");
    }
    Hours hours = plan.problem().plant().hours();
    if (hours.endMin() - event.fromMin() > WEEK) {
      notes.add(
          event.source()
              + ": shifts repeat by the week, so whoever is away is counted as away on the same"
              + " weekday of later weeks of the plan, too");
    }
  }
}
