package pressweek.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pressweek.data.molding.Changeover;
import pressweek.data.problem.Job;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Setup;

/**
 * Changes that a plan cannot do without, unless it leaves out jobs.
 *
 * <p>Proof, setups: see {@link Entries}.
 *
 * <p>Proof, molds: a mold that stands on no press when the plan starts, and that what is running
 * does not use, is on a press only after a change that mounts it. That change takes at least its
 * mount minutes and the first article, or what a recorded change says that may match. Where it
 * leads to a setup that is counted already, it costs that much more than what was counted for it;
 * the most that was counted for any setup of the mold is taken off. Changes that mount different
 * molds are different changes.
 *
 * <p>Proof, materials: the first run of a material that is in no barrel when the plan starts, and
 * that is not running, finds another one in its barrel, and pays at least the least PURGE to it on
 * any press from anything that may be there: 0 from an empty or unknown barrel, what a recorded
 * change says where one may match. First runs of different materials are different runs, and setups
 * and molds count no PURGE.
 */
final class LeastChanges {
  /**
   * Something that must be paid once unless all of these jobs are left out.
   *
   * @param what mold, or resin and colour, in words
   * @param amount thousandths of a cent
   * @param jobs the jobs
   */
  record Need(String what, long amount, int[] jobs) {}

  final List<Need> setups = new ArrayList<>();
  final List<Need> molds = new ArrayList<>();
  final List<Need> materials = new ArrayList<>();

  private final Lines lines;
  private final Problem problem;
  private final Changeover changeover;
  private final long[] leastStartUp;
  private final List<Set<String>> pressesOfMold = new ArrayList<>();

  LeastChanges(Lines lines) {
    this.lines = lines;
    problem = lines.problem;
    changeover = new Changeover(problem);
    leastStartUp = new long[lines.names.molds().size()];
    Arrays.fill(leastStartUp, Lines.NEVER);
    lines.names.molds().forEach(m -> pressesOfMold.add(new HashSet<>()));
    for (int j = 0; j < lines.size(); j++) {
      Job job = problem.jobs().get(j);
      int material = lines.names.material(job.resin(), job.colour());
      for (Option option : lines.options.get(j)) {
        int mold = lines.names.mold(option.mold());
        long startUp = lines.charges.startUp(material, option.making().startupGrams());
        leastStartUp[mold] = Math.min(leastStartUp[mold], startUp);
        pressesOfMold.get(mold).add(option.press());
      }
    }
    Entries entries = new Entries(lines, changeover);
    entries.entries.forEach(e -> add(setups, e.setup().mold(), e.change() + e.startUp(), e.jobs()));
    findMolds(entries);
    findMaterials();
  }

  private Stream<Job> running() {
    return problem.jobs().stream().filter(lines::isRunning);
  }

  private void findMolds(Entries entries) {
    Set<String> there = new HashSet<>();
    problem.floor().states().stream().map(s -> s.setup().mold()).forEach(there::add);
    running().flatMap(j -> j.options().stream()).map(Option::mold).forEach(there::add);
    List<List<Integer>> sole = new ArrayList<>();
    lines.names.molds().forEach(m -> sole.add(new ArrayList<>()));
    for (int j = 0; j < lines.size(); j++) {
      if (lines.soleMold[j] >= 0) {
        sole.get(lines.soleMold[j]).add(j);
      }
    }
    for (Mold mold : problem.floor().molds()) {
      int m = lines.names.mold(mold.id());
      if (!there.contains(mold.id()) && !sole.get(m).isEmpty()) {
        OptionalLong counted =
            entries.entries.stream()
                .filter(e -> e.setup().mold().equals(mold.id()))
                .mapToLong(Entries.Entry::change)
                .max();
        long amount =
            lines.charges.change(mountMin(mold.id(), m))
                + (counted.isPresent() ? -counted.getAsLong() : leastStartUp[m]);
        add(molds, mold.id(), amount, sole.get(m));
      }
    }
  }

  private static void add(List<Need> needs, String what, long amount, List<Integer> jobs) {
    if (amount > 0) {
      needs.add(new Need(what, amount, jobs.stream().mapToInt(Integer::intValue).toArray()));
    }
  }

  private int mountMin(String mold, int number) {
    int table = changeover.mountMin(mold) + problem.plant().changes().firstArticleMin();
    return problem.floor().recordedChanges().stream()
        .filter(r -> Entries.mayBe(r.to().mold(), mold) && !r.from().mold().equals(mold))
        .filter(r -> r.press().isEmpty() || pressesOfMold.get(number).contains(r.press()))
        .mapToInt(RecordedChange::minutes)
        .reduce(table, Math::min);
  }

  private void findMaterials() {
    Set<Integer> there = new HashSet<>();
    problem.floor().states().stream()
        .map(s -> lines.names.material(s.setup().resin(), s.setup().colour()))
        .forEach(there::add);
    running().map(j -> lines.names.material(j.resin(), j.colour())).forEach(there::add);
    List<List<Integer>> jobs = new ArrayList<>();
    lines.names.materials().forEach(m -> jobs.add(new ArrayList<>()));
    for (int j = 0; j < lines.size(); j++) {
      Job job = problem.jobs().get(j);
      jobs.get(lines.names.material(job.resin(), job.colour())).add(j);
    }
    int[] used = IntStream.range(0, jobs.size()).filter(m -> !jobs.get(m).isEmpty()).toArray();
    for (int m : used) {
      if (!there.contains(m)) {
        Setup to = setup(m);
        String what = (to.resin() + " " + to.colour()).strip();
        add(materials, what, purge(m, used, jobs.get(m)), jobs.get(m));
      }
    }
  }

  private Setup setup(int material) {
    var named = lines.names.materials().get(material);
    return new Setup("", "", named.resin(), named.colour());
  }

  /** The least PURGE of the first run of a material. */
  private long purge(int material, int[] used, List<Integer> jobs) {
    Setup to = setup(material);
    int factor =
        IntStream.of(used)
            .filter(m -> m != material)
            .map(m -> changeover.barrelWork(setup(m), to).purgeThousandths())
            .reduce(Integer.MAX_VALUE, Math::min);
    Set<String> presses = new HashSet<>();
    jobs.forEach(j -> lines.options.get(j).forEach(o -> presses.add(o.press())));
    return presses.stream()
        .mapToInt(
            press -> {
              int first = changeover.barrelWork(standing(press), to).purgeThousandths();
              return recorded(press, to, changeover.purgeG(press, Math.min(factor, first)));
            })
        .min()
        .stream()
        .mapToLong(grams -> lines.charges.purge(material, grams))
        .sum();
  }

  /** Grams of the table, or fewer where a recorded change to a material on a press may say so. */
  private int recorded(String press, Setup to, int purgeG) {
    return problem.floor().recordedChanges().stream()
        .filter(r -> Entries.mayBe(r.press(), press))
        .filter(r -> Entries.mayBe(r.to().resin(), to.resin()))
        .filter(r -> Entries.mayBe(r.to().colour(), to.colour()))
        .flatMapToInt(r -> r.purgeG().stream())
        .reduce(purgeG, Math::min);
  }

  private Setup standing(String press) {
    return problem.floor().states().stream()
        .filter(s -> s.press().equals(press))
        .map(PressState::setup)
        .findFirst()
        .map(s -> new Setup("", "", s.resin(), s.colour()))
        .orElse(new Setup("", "", "", ""));
  }
}
