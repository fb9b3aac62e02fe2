package pressweek.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Component;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Take;
import pressweek.solver.rules.Shelf;
import pressweek.solver.rules.Shelf.Need;

/**
 * Assigns lots to runs in the order of their starts, those of the same start in the order of their
 * lines: lots reserved for the line, then for the order, then free lots, each first expired, then
 * first in; then receipts. A traced run takes one source that suffices, where there is one.
 */
final class Pulling {
  private final Problem problem;
  private final Map<String, Drawer> drawers = new HashMap<>();
  private final Map<String, Boolean> counted = new HashMap<>();
  private final List<Pull> pulls = new ArrayList<>();

  /** The lots of a component and what is left in them. */
  private record Drawer(Shelf shelf, int[] left) {}

  /** A run with its job. */
  private record Placed(Run run, Job job, int number) {}

  private Pulling(Problem problem) {
    this.problem = problem;
  }

  /** The pulls of runs, by the time at which they are needed. */
  static List<Pull> of(Problem problem, List<Run> runs) {
    Pulling pulling = new Pulling(problem);
    Map<String, Integer> numbers = new HashMap<>();
    for (int i = 0; i < problem.jobs().size(); i++) {
      numbers.put(problem.jobs().get(i).id(), i);
    }
    List<Placed> order = new ArrayList<>();
    for (Run run : runs) {
      int number = numbers.getOrDefault(run.job(), -1);
      if (number >= 0) {
        order.add(new Placed(run, problem.jobs().get(number), number));
      }
    }
    order.sort(
        Comparator.<Placed>comparingInt(p -> p.run().startMin()).thenComparingInt(Placed::number));
    for (Placed placed : order) {
      option(placed).making().takes().forEach(take -> pulling.pull(placed, take));
    }
    return pulling.pulls;
  }

  private static Option option(Placed placed) {
    Run run = placed.run();
    return placed.job().options().stream()
        .filter(o -> o.press().equals(run.press()) && o.mold().equals(run.mold()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("run " + run.id() + " has no option"));
  }

  private boolean counts(Take take) {
    Component component = take.component();
    return counted.computeIfAbsent(
        component + "\n" + take.insert(),
        key -> problem.materials().stock().counts(component, take.insert()));
  }

  private void pull(Placed placed, Take take) {
    Run run = placed.run();
    boolean exchanged = run.change().kinds().stream().anyMatch(k -> k != ChangeKind.FOOD_CLEARANCE);
    if (!counts(take)) {
      int all = take.free(exchanged) + take.reserved(exchanged);
      if (all > 0) {
        pulls.add(new Pull(run.id(), run.press(), needMin(run), take.insert(), "", "", 0, all));
      }
      return;
    }
    int reserved = draw(placed, take, placed.job().id(), take.reserved(exchanged));
    reserved = draw(placed, take, placed.job().line().order(), reserved);
    int missing = draw(placed, take, "", take.free(exchanged) + reserved);
    if (missing > 0) {
      throw new IllegalStateException(
          "run " + run.id() + " lacks " + missing + " of " + take.insert());
    }
  }

  private int needMin(Run run) {
    return run.startMin() - problem.plant().crew().insertLeadMin();
  }

  /** Draws from what is reserved for someone ("" for free stock); answers what is missing. */
  private int draw(Placed placed, Take take, String who, int pieces) {
    Run run = placed.run();
    Drawer drawer =
        drawers.computeIfAbsent(
            take.insert(),
            what -> {
              Shelf shelf = Shelf.of(problem, what);
              return new Drawer(shelf, shelf.full());
            });
    Need need = new Need(who, needMin(run), run.startMin(), pieces, placed.job().traced());
    return drawer
        .shelf()
        .draw(
            drawer.left(),
            need,
            (place, drawn) -> pulls.add(pull(run, take, drawer.shelf(), place, drawn)));
  }

  private Pull pull(Run run, Take take, Shelf shelf, int place, int pieces) {
    Shelf.Source source = shelf.sources().get(place);
    return new Pull(
        run.id(),
        run.press(),
        needMin(run),
        take.insert(),
        source.lot(),
        source.bin(),
        source.usableMin(),
        pieces);
  }
}
