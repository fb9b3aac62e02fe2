package pressweek.reports.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Job;
import pressweek.data.problem.Materials;
import pressweek.data.problem.NotChecked;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Unplaced;

/** A plan put together by hand. Tests state only what differs from two presses without a run. */
public final class SmallPlan {
  public final List<Run> runs = new ArrayList<>();
  public final List<Job> jobs = new ArrayList<>();
  public final List<Pull> pulls = new ArrayList<>();
  public final List<Dismount> dismounts = new ArrayList<>();
  public final List<Unplaced> unplaced = new ArrayList<>();
  public final List<Charge> unplacedCharges = new ArrayList<>();
  public final List<Reference> references = new ArrayList<>();
  public final List<NotChecked> notChecked = new ArrayList<>();
  public final List<PressState> states = new ArrayList<>();
  public final List<Promise> promises = new ArrayList<>();
  public final List<Downtime> downtime = new ArrayList<>();
  public Map<Rule, Long> costs = Map.of();
  public Materials materials = SampleWeek.materials(true);
  public String number = "2026-W49/3";
  public String replaces = "";
  public boolean money = true;
  public boolean stopped;

  /**
   * Adds a job for press, mold {@code M1}, insert {@code S0825}, resin PP in black, due at a local
   * time.
   */
  public SmallPlan job(String order, String press, String due) {
    return job(order, new SampleJobs.Choice(press, "M1", "PP", "BLK", "S0825", 500, at(due)));
  }

  /** Adds line 1 of an order. */
  public SmallPlan job(String order, SampleJobs.Choice choice) {
    jobs.add(SampleJobs.job(order, "1", choice));
    return this;
  }

  /** Adds a run of line 1 of an order without a change. */
  public SmallPlan run(String id, String order, String press, String from, String to) {
    Setup same = new Setup("M1", "", "PP", "BLK");
    Change none = new Change(same, same, List.of(), at(from), at(from), 0, 0);
    return run(id, order + "/1", press, none, List.of(at(from), at(to)));
  }

  /** Adds a run of a job after a change; the times are its start and its end. */
  public SmallPlan run(String id, String job, String press, Change change, List<Integer> times) {
    int seq = (int) runs.stream().filter(r -> r.press().equals(press)).count() + 1;
    int end = times.get(1);
    runs.add(
        new Run(id, job, press, "M1", seq, change, times.get(0), end, end, List.of(), List.of()));
    return this;
  }

  /** Gives the last run waits and charges. */
  public SmallPlan because(List<Wait> waits, List<Charge> charges) {
    Run last = runs.remove(runs.size() - 1);
    runs.add(
        new Run(
            last.id(),
            last.job(),
            last.press(),
            last.mold(),
            last.seq(),
            last.change(),
            last.startMin(),
            last.endMin(),
            last.readyMin(),
            waits,
            charges));
    return this;
  }

  /** A change on a press from one setup to another, from local time to local time. */
  public static Change change(List<ChangeKind> kinds, Setup from, Setup to, String... times) {
    int start = at(times[0]);
    int end = at(times[1]);
    return new Change(from, to, kinds, start, end, end - start, 375);
  }

  /** Adds a pull from a lot in the house. */
  public SmallPlan pull(String run, String press, String needBy, String insert) {
    pulls.add(new Pull(run, press, at(needBy), insert, "L1", "C1-2", 0, 540));
    return this;
  }

  private static int at(String local) {
    return SampleWeek.at(local);
  }

  public Plan plan() {
    return new Plan(
        new Head(
            number,
            replaces,
            at("2026-11-30T05:40"),
            Map.of(),
            new Settings(0, 100, 1),
            references,
            stopped),
        new Problem(
            SampleWeek.plant("Quillback Grips", money),
            new Floor(
                SampleWeek.presses(2),
                List.of(SampleJobs.mold("M1")),
                states,
                downtime,
                promises,
                List.of()),
            materials,
            jobs,
            List.of(),
            notChecked),
        runs,
        dismounts,
        pulls,
        unplaced,
        unplacedCharges,
        figures());
  }

  private Figures figures() {
    List<Integer> late = runs.stream().map(this::late).filter(minutes -> minutes > 0).toList();
    long changes = runs.stream().filter(r -> !r.change().kinds().isEmpty()).count();
    return new Figures(
        runs.size(),
        unplaced.size(),
        late.size(),
        late.stream().mapToLong(Integer::longValue).sum(),
        (int) changes + dismounts.size(),
        runs.stream().mapToLong(r -> r.change().minutes()).sum(),
        runs.stream().mapToLong(r -> r.change().purgeG()).sum(),
        costs);
  }

  private int late(Run run) {
    return jobs.stream()
        .filter(j -> j.id().equals(run.job()))
        .mapToInt(j -> run.readyMin() - j.deadline().dueMin())
        .findFirst()
        .orElse(0);
  }
}
