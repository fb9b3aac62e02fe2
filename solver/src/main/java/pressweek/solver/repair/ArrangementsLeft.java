package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
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
        new Arrangements.Settled(DryersLeft.of(plan, clock.nowMin()), terms(was.terms(), left)));
  }

  /**
   * A change under way books its setter, its press and its mold until it ends, as a trial does; the
   * other work that a setter's share leaves after a change books him, too.
   */
  private List<Trial> trials(List<Trial> was) {
    List<Trial> trials = new ArrayList<>(was);
    if (!plan.problem().plant().crew().settersChecked()) {
      return trials;
    }
    for (Progress progress : standing.runs()) {
      Run run = progress.run();
      int minutes = run.change().minutes();
      if (progress.stage() == Stage.CHANGING && progress.atMin() > clock.nowMin()) {
        String reason = "change for " + run.job() + " goes on";
        book(trials, run.press(), run.mold(), progress.atMin(), reason);
        rest(trials, progress.atMin(), minutes);
        check(trials, run, progress.atMin());
      } else if (progress.stage() != Stage.WAITING && minutes > 0) {
        rest(trials, run.change().endMin(), minutes);
      }
    }
    for (Standing.TakenOff off : standing.takenOff()) {
      book(trials, off.press(), off.mold(), off.untilMin(), "comes off");
      rest(trials, off.untilMin(), clock.dismountMin(off.mold()));
    }
    plan.dismounts().stream()
        .filter(d -> d.endMin() <= clock.nowMin())
        .forEach(d -> rest(trials, d.endMin(), d.minutes()));
    return trials;
  }

  private void book(List<Trial> trials, String press, String mold, int to, String reason) {
    trials.add(new Trial(press, mold, clock.nowMin(), to, 1, reason, OptionalInt.empty()));
  }

  /** The inspector of a change under way is with its last working minutes. */
  private void check(List<Trial> trials, Run run, int end) {
    int minutes = plan.problem().plant().changes().firstArticleMin();
    boolean checked =
        plan.problem().plant().hours().shifts().stream().anyMatch(s -> s.inspectors().isPresent());
    if (!checked || minutes == 0 || !Work.exchanges(run.change())) {
      return;
    }
    WorkSpans hours = clock.press(run.press());
    int from = end;
    while (from > clock.nowMin() && hours.between(from, end) < minutes) {
      from--;
    }
    String reason = "first article of " + run.job();
    trials.add(new Trial("", "", from, end, 0, reason, OptionalInt.of(1)));
  }

  /** The other work of the setter of a change that ends at a time. */
  private void rest(List<Trial> trials, int end, int minutes) {
    int share = plan.problem().plant().crew().setterSharePct();
    int rest = (minutes * (100 - share) + share - 1) / share;
    int from = Math.max(clock.nowMin(), end);
    if (end + rest > from) {
      trials.add(
          new Trial(
              "",
              "",
              from,
              end + rest,
              1,
              "other work of a setter after a change",
              OptionalInt.empty()));
    }
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
