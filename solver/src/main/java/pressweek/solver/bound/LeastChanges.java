package pressweek.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
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
 * <p>Proof, molds: a mold that stands on no press when the plan starts, and that what is running
 * does not use, is on a press only after a change that mounts it. That change exchanges the mold,
 * so it takes at least its mount minutes and the first article, or what a recorded change says that
 * may match, and its run pays at least the least start-up of all options with the mold. Changes
 * that mount different molds are different changes.
 *
 * <p>Proof, materials: the first run of a material that is in no barrel when the plan starts, and
 * that is not running, finds another one in its barrel, and its change pays at least the least
 * purge to it on any press from anything that may be there: 0 from an empty or unknown barrel, what
 * a recorded change says where one may match. Its minutes of barrel work come on top of those of a
 * mold unless colour work goes on beside or a recorded change may match. Charges for minutes are
 * rounded down once for the sum, here for each part. First runs of different materials are
 * different runs.
 */
final class LeastChanges {
  /**
   * Something that must be paid once unless all of these jobs are left out.
   *
   * @param what mold, or resin and colour
   * @param amount thousandths of a cent
   * @param jobs the jobs
   */
  record Need(String what, long amount, int[] jobs) {}

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
    findMolds();
    findMaterials();
  }

  private Stream<Job> running() {
    return problem.jobs().stream().filter(lines::isRunning);
  }

  private void findMolds() {
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
        long amount = lines.charges.change(mountMin(mold.id(), m)) + leastStartUp[m];
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
        .filter(r -> mayBe(r.to().mold(), mold) && !r.from().mold().equals(mold))
        .filter(r -> r.press().isEmpty() || pressesOfMold.get(number).contains(r.press()))
        .mapToInt(RecordedChange::minutes)
        .reduce(table, Math::min);
  }

  private static boolean mayBe(String recorded, String actual) {
    return recorded.isEmpty() || recorded.equals(actual);
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
    int[] used =
        IntStream.range(0, jobs.size()).filter(m -> !jobs.get(m).isEmpty()).toArray();
    for (int m : used) {
      if (!there.contains(m)) {
        Setup to = setup(m);
        String what = (to.resin() + " " + to.colour()).strip();
        add(materials, what, change(m, used, jobs.get(m)), jobs.get(m));
      }
    }
  }

  private Setup setup(int material) {
    var named = lines.names.materials().get(material);
    return new Setup("", "", named.resin(), named.colour());
  }

  /** The least that the first run of a material pays for purge and barrel work. */
  private long change(int material, int[] used, List<Integer> jobs) {
    Setup to = setup(material);
    List<Changeover.BarrelWork> works =
        IntStream.of(used)
            .filter(m -> m != material)
            .mapToObj(m -> changeover.barrelWork(setup(m), to))
            .toList();
    int minutes = works.stream().mapToInt(Changeover.BarrelWork::minutes).min().orElse(-1);
    int purge = works.stream().mapToInt(Changeover.BarrelWork::purgeThousandths).min().orElse(-1);
    long least = Lines.NEVER;
    Set<String> presses = new HashSet<>();
    jobs.forEach(j -> lines.options.get(j).forEach(o -> presses.add(o.press())));
    for (String press : presses) {
      Changeover.BarrelWork first = changeover.barrelWork(standing(press), to);
      int min = minutes < 0 ? first.minutes() : Math.min(minutes, first.minutes());
      int factor = purge < 0 ? first.purgeThousandths() : Math.min(purge, first.purgeThousandths());
      least = Math.min(least, change(press, material, min, changeover.purgeG(press, factor)));
    }
    return presses.isEmpty() ? 0 : least;
  }

  /** What a change to a material on a press pays for purge and minutes, recorded or not. */
  private long change(String press, int material, int minutes, int purgeG) {
    Setup to = setup(material);
    List<RecordedChange> matching =
        problem.floor().recordedChanges().stream()
            .filter(r -> mayBe(r.press(), press))
            .filter(r -> mayBe(r.to().resin(), to.resin()))
            .filter(r -> mayBe(r.to().colour(), to.colour()))
            .toList();
    int grams =
        matching.stream().flatMapToInt(r -> r.purgeG().stream()).reduce(purgeG, Math::min);
    boolean onTop = matching.isEmpty() && !problem.plant().changes().colourWorkBeside();
    return lines.charges.purge(material, grams) + (onTop ? lines.charges.change(minutes) : 0);
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
