package pressweek.solver.bound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.molding.Changeover;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Setup;

/**
 * Setups (mold, tooling set, resin and colour) that a plan must come to by a change, unless it
 * leaves out all jobs that can be made in no other.
 *
 * <p>Proof: before the first run of a setup, its press is set up otherwise: as it was when the plan
 * started, or as for a run of another setup; its tooling set may have been taken out, or its mold
 * taken off. Where all that may be there differs from the setup by something that counts as
 * exchanged, the run comes after a change, which takes the least of: mounting the mold; with the
 * mold there, what the table says for each other setup of it; what a recorded change says that may
 * match. The run pays at least the least start-up of all options of the setup. First runs of
 * different setups are different runs. Setups that stand at the start, or that are running, are
 * left out.
 */
final class Entries {
  /**
   * A setup that must be come to.
   *
   * @param setup the setup
   * @param change CHANGE at the least
   * @param startUp START_UP at the least
   * @param jobs jobs that can be made in no other
   */
  record Entry(Setup setup, long change, long startUp, List<Integer> jobs) {}

  final List<Entry> entries = new ArrayList<>();

  private final Lines lines;
  private final Problem problem;
  private final Changeover changeover;
  private final Set<Setup> there = new HashSet<>();

  /** All setups that a press may be in, by mold. */
  private final Map<String, Set<Setup>> byMold = new HashMap<>();

  private final Map<Setup, Long> startUps = new HashMap<>();
  private final Map<Setup, Set<String>> presses = new HashMap<>();
  private final Map<Setup, List<Integer>> jobs = new LinkedHashMap<>();

  Entries(Lines lines, Changeover changeover) {
    this.lines = lines;
    problem = lines.problem;
    this.changeover = changeover;
    problem.floor().states().stream().map(PressState::setup).forEach(this::stands);
    for (int j = 0; j < lines.size(); j++) {
      read(j, problem.jobs().get(j));
    }
    jobs.forEach(
        (setup, only) -> {
          if (!there.contains(setup) && certain(setup)) {
            long change = lines.charges.change(minutes(setup));
            entries.add(new Entry(setup, change, startUps.getOrDefault(setup, 0L), only));
          }
        });
  }

  private void stands(Setup setup) {
    there.add(setup);
    byMold.computeIfAbsent(setup.mold(), m -> new LinkedHashSet<>()).add(setup);
  }

  private void read(int job, Job line) {
    Set<Setup> all = new LinkedHashSet<>();
    int material = lines.names.material(line.resin(), line.colour());
    for (Option option : lines.options.get(job)) {
      Setup setup = new Setup(option.mold(), option.tooling(), line.resin(), line.colour());
      all.add(setup);
      byMold.computeIfAbsent(option.mold(), m -> new LinkedHashSet<>()).add(setup);
      presses.computeIfAbsent(setup, s -> new HashSet<>()).add(option.press());
      startUps.merge(
          setup, lines.charges.startUp(material, option.making().startupGrams()), Math::min);
    }
    if (lines.isRunning(line)) {
      there.addAll(all);
    }
    if (all.size() == 1) {
      jobs.computeIfAbsent(all.iterator().next(), s -> new ArrayList<>()).add(job);
    }
  }

  /** Whether every other setup with the mold differs by something that is exchanged. */
  private boolean certain(Setup setup) {
    boolean taken = taken(setup);
    return byMold.getOrDefault(setup.mold(), Set.of()).stream()
        .filter(from -> !from.equals(setup))
        .filter(from -> taken || from.tooling().equals(setup.tooling()))
        .allMatch(
            from -> differ(from.resin(), setup.resin()) || differ(from.colour(), setup.colour()));
  }

  /** Whether the set of another setup may have been taken out, which then is as this one. */
  private boolean taken(Setup to) {
    return to.tooling().isEmpty() && !problem.arranged().things().isEmpty();
  }

  private static boolean differ(String from, String to) {
    return !from.isEmpty() && !to.isEmpty() && !from.equals(to);
  }

  private int minutes(Setup to) {
    ChangeTable table = problem.plant().changes();
    int least = changeover.mountMin(to.mold());
    boolean taken = taken(to);
    for (Setup from : byMold.getOrDefault(to.mold(), Set.of())) {
      if (!from.equals(to)) {
        boolean same = taken || from.tooling().equals(to.tooling());
        int tooling = same ? 0 : table.toolingMin();
        int barrel = changeover.barrelWork(from, to).minutes();
        least =
            Math.min(
                least, table.colourWorkBeside() ? Math.max(tooling, barrel) : tooling + barrel);
      }
    }
    Set<String> on = presses.getOrDefault(to, Set.of());
    return problem.floor().recordedChanges().stream()
        .filter(r -> r.press().isEmpty() || on.contains(r.press()))
        .filter(r -> mayBe(r.to().mold(), to.mold()))
        .filter(r -> mayBe(r.to().resin(), to.resin()) && mayBe(r.to().colour(), to.colour()))
        .mapToInt(RecordedChange::minutes)
        .reduce(least + table.firstArticleMin(), Math::min);
  }

  /** Whether a cell of a recorded change may stand for a name. */
  static boolean mayBe(String recorded, String actual) {
    return recorded.isEmpty() || recorded.equals(actual);
  }
}
