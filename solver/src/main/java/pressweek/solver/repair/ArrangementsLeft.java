package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Job;
import pressweek.data.problem.Link;
import pressweek.data.problem.Making;
import pressweek.data.problem.Terms;
import pressweek.data.problem.Trial;
import pressweek.solver.repair.Progress.Stage;

/** What is arranged for the week that is left, with the places of the earlier plan. */
final class ArrangementsLeft {
  private final Plan plan;
  private final FloorClock clock;
  private final Standing standing;

  ArrangementsLeft(Plan plan, FloorClock clock, Standing standing) {
    this.plan = plan;
    this.clock = clock;
    this.standing = standing;
  }

  Arrangements left(List<Job> jobs) {
    Arrangements was = plan.problem().arranged();
    Set<String> left = new HashSet<>(jobs.stream().map(Job::id).toList());
    List<Link> links =
        was.links().stream()
            .filter(link -> left.contains(link.job()) && left.contains(link.after()))
            .toList();
    return new Arrangements(
        was.things(),
        was.devices(),
        ServicesLeft.after(was.services(), shots()),
        trials(was.trials()),
        links,
        was.surplus(),
        was.opening(),
        new Arrangements.Settled(was.drying(), terms(was.terms(), left)));
  }

  /** A change under way books its setter, its press and its mold until it ends, as a trial does. */
  private List<Trial> trials(List<Trial> was) {
    List<Trial> trials = new ArrayList<>(was);
    if (!plan.problem().plant().crew().settersChecked()) {
      return trials;
    }
    for (Progress progress : standing.runs()) {
      Run run = progress.run();
      if (progress.stage() == Stage.CHANGING && progress.atMin() > clock.nowMin()) {
        trials.add(
            new Trial(
                run.press(),
                run.mold(),
                clock.nowMin(),
                progress.atMin(),
                1,
                "change for " + run.job() + " goes on"));
      }
    }
    for (Standing.TakenOff off : standing.takenOff()) {
      trials.add(
          new Trial(off.press(), off.mold(), clock.nowMin(), off.untilMin(), 1, "comes off"));
    }
    return trials;
  }

  private List<ServicesLeft.Shots> shots() {
    List<ServicesLeft.Shots> shots = new ArrayList<>();
    for (Progress progress : standing.runs()) {
      if (progress.stage() == Stage.WAITING || progress.stage() == Stage.CHANGING) {
        continue;
      }
      Run run = progress.run();
      Work work = Work.of(run, clock.job(run));
      Making making = work.option().making();
      int startup = Work.exchanges(run.change()) ? making.startupShots() : 0;
      int made =
          progress.stage() == Stage.DONE ? making.shots() : work.shotsMade(progress.workedMin());
      shots.add(
          new ServicesLeft.Shots(
              run.mold(), run.startMin(), making.shots() + startup, made + startup));
    }
    return shots;
  }

  /** Where runs that have not begun were; what has begun cannot move any more. */
  private Terms terms(Terms was, Set<String> left) {
    List<Terms.Place> places = new ArrayList<>();
    for (Run run : plan.runs()) {
      Progress progress = standing.of(run);
      if (left.contains(run.job()) && !progress.under()) {
        places.add(new Terms.Place(run.job(), run.press(), run.startMin()));
      }
    }
    return new Terms(
        was.campaignMin(), was.shortCampaignHour(), was.closeHour(), was.movedRun(), places);
  }
}
