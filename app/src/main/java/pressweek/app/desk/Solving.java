package pressweek.app.desk;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.app.plan.EarlierPlans;
import pressweek.app.plan.Replanner;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.reports.moves.Moves;
import pressweek.solver.Finishing;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Finding;
import pressweek.solver.why.Reordering;

/**
 * Searches for a better week beside the one that stands, one search at a time. What it finds is a
 * proposal: it becomes the week only when somebody takes it.
 */
public final class Solving implements AutoCloseable {
  private static final System.Logger LOG = System.getLogger(Solving.class.getName());
  private static final long SEED = 1;

  private final Desk desk;
  private final Turn turn = new Turn();
  private final List<Proposal> proposals = new ArrayList<>();
  private volatile String words = "";

  /** What is searched for, and how it is ended. */
  private record Search(Work work, Runnable stop) {}

  /** Finds a proposal. */
  private interface Work {
    Proposal find() throws StoreTrouble, IOException;
  }

  /** Searches for the week on a desk. */
  public Solving(Desk desk) {
    this.desk = desk;
  }

  /** Whose turn it is to search, for whatever else searches. */
  public Turn turn() {
    return turn;
  }

  /** The search of the week that goes on; empty for none. */
  public Optional<Turn.Going> going() {
    return turn.going(Turn.Kind.WEEK);
  }

  /** What the last search found and nobody has taken or left yet. */
  public synchronized Optional<Proposal> proposal() {
    return proposals.stream().findFirst();
  }

  /**
   * Begins to solve the week anew from the one that stands.
   *
   * @return why not, in a sentence; empty when it has begun
   */
  public Optional<String> solve(long version, int seconds, String by) throws StoreTrouble {
    Optional<Standing> now = desk.standing().filter(s -> s.version() == version);
    if (now.isEmpty()) {
      return Optional.of("the week is another by now; look at it and solve again");
    }
    DeskWeek week = now.get().week();
    Planner planner = new Planner(withoutLeftOut(week));
    Head head = Heads.with(week.plan().head(), new Settings(seconds, 0, SEED));
    Search search = new Search(() -> solved(version, by, week, planner, head), planner::stop);
    return begin(search, by, seconds);
  }

  /**
   * Begins to plan what is left of the week after something happened on the floor.
   *
   * @return why not, in a sentence; empty when it has begun
   */
  public Optional<String> repair(long version, Replanner.Happened happened, int seconds, String by)
      throws StoreTrouble, IOException {
    Optional<Standing> now = desk.standing().filter(s -> s.version() == version);
    if (now.isEmpty()) {
      return Optional.of("the week is another by now; look at it and say it again");
    }
    DeskWeek week = now.get().week();
    EarlierPlans earlier = new EarlierPlans(Optional.of(week.plan()), List.of(), List.of());
    Replanner replanner = new Replanner(desk.folder().look().folder(), earlier, happened);
    Settings settings = new Settings(seconds, 0, SEED);
    Search search =
        new Search(
            () -> {
              List<Long> reported = Reports.keep(desk, happened, by);
              Replanner.Result found = replanner.plan(settings, desk.nowMin(), watcher());
              return repaired(new Asked(version, by, reported), week, found);
            },
            replanner::stop);
    return begin(search, by, seconds);
  }

  private synchronized Optional<String> begin(Search search, String by, int seconds) {
    Turn.Going going = new Turn.Going(Turn.Kind.WEEK, by, seconds, search.stop());
    Optional<String> refused =
        turn.begin(going, () -> run(search), () -> desk.tell(new DeskEvent.Proposed(words)));
    if (refused.isEmpty()) {
      proposals.clear();
    }
    return refused;
  }

  private void run(Search search) {
    words = "the search failed; see the log";
    try {
      found(search.work().find());
      words = "a proposal is there";
    } catch (StoreTrouble | IOException e) {
      LOG.log(System.Logger.Level.WARNING, "a search", e);
    }
  }

  private synchronized void found(Proposal proposal) {
    proposals.clear();
    proposals.add(proposal);
  }

  /** Ends the search soon; what it has found is the proposal. */
  public void stop() {
    going().ifPresent(g -> g.stop().run());
  }

  private Watcher watcher() {
    return progress -> desk.tell(new DeskEvent.Searched(progress));
  }

  private static Problem withoutLeftOut(DeskWeek week) {
    Problem of = week.plan().problem();
    return of.withJobs(
        of.jobs().stream().filter(j -> !week.marks().leftOut().containsKey(j.id())).toList());
  }

  private Proposal solved(long version, String by, DeskWeek week, Planner planner, Head head) {
    Plan plan = planner.plan(head, Optional.of(week.plan()), watcher());
    DeskWeek found = new DeskWeek(withLeftOut(plan, week), week.marks());
    Moves moves =
        new Moves(week.plan(), week.plan(), found.plan(), List.of(), List.of(), List.of());
    List<String> findings = Desk.findings(found.plan());
    return new Proposal(version, Proposal.From.SOLVE, by, found, findings, moves, List.of());
  }

  /** The plan with the lines that were left out by hand, at what that costs. */
  private static Plan withLeftOut(Plan plan, DeskWeek week) {
    List<Unplaced> out = new ArrayList<>(plan.unplaced());
    List<Charge> charges = new ArrayList<>(plan.unplacedCharges());
    Plan before = week.plan();
    HashSet<String> jobs = new HashSet<>(before.problem().jobs().stream().map(Job::id).toList());
    List<Unplaced> charged = before.unplaced().stream().filter(u -> jobs.contains(u.id())).toList();
    for (int i = 0; i < charged.size(); i++) {
      if (week.marks().leftOut().containsKey(charged.get(i).id())) {
        out.add(charged.get(i));
        charges.add(before.unplacedCharges().get(i));
      }
    }
    Plan whole =
        new Plan(
            plan.head(),
            before.problem(),
            plan.runs(),
            plan.dismounts(),
            plan.pulls(),
            out,
            charges,
            plan.figures());
    return Finishing.of(plan.head(), new Reordering(whole).standing(), before);
  }

  /** Who asked for a repair, of which version of the week, for which of the floor's reports. */
  private record Asked(long version, String by, List<Long> reported) {}

  private static Proposal repaired(Asked asked, DeskWeek week, Replanner.Result found) {
    Plan plan = found.audited().plan();
    Plan kept = plan.with(Heads.with(plan.head(), week.plan().head().inputs()));
    Set<String> lines = plan.problem().jobs().stream().map(Job::id).collect(Collectors.toSet());
    return new Proposal(
        asked.version(),
        Proposal.From.FLOOR,
        asked.by(),
        leavingOut(new DeskWeek(kept, week.marks().of(lines))),
        found.audited().findings().stream().map(Finding::message).toList(),
        found.moves(),
        asked.reported());
  }

  /** What was left out by hand stays out, though a repair gave it a place. */
  private static DeskWeek leavingOut(DeskWeek week) {
    DeskWeek rest = week;
    for (Map.Entry<String, String> out : week.marks().leftOut().entrySet()) {
      Edited edited = new Editing(rest).edit(new Edit.LeaveOut(out.getKey(), ""));
      rest = edited instanceof Edited.Done done ? done.week() : rest;
    }
    return rest;
  }

  /** Makes the proposal the week. */
  public synchronized Taken take(long version, Change change) throws StoreTrouble {
    if (proposals.isEmpty()) {
      return new Taken.Refused("there is no proposal");
    }
    Proposal found = proposals.get(0);
    if (found.version() != version) {
      return new Taken.Refused(
          "the proposal was made from another week than the one you see; solve again");
    }
    String what = found.from() == Proposal.From.SOLVE ? "solved the week" : "repaired the week";
    Taken taken = desk.keep(found.week(), what, version, change);
    if (taken instanceof Taken.Done done) {
      Reports.takenInto(desk, done.standing().week().plan().head().number(), found, change);
      leave();
    }
    return taken;
  }

  /** Keeps the week as it is. */
  public synchronized void leave() {
    proposals.clear();
  }

  @Override
  public void close() {
    turn.close();
  }
}
