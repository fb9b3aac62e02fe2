package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.problem.Component;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Take;
import pressweek.solver.rules.Shelf;
import pressweek.solver.rules.Shelf.Source;

/**
 * Free stock over time of each component that can run short. What is not counted, or is in the
 * house in a quantity that covers whatever the week may take, cannot hold up a run and has no
 * number here.
 */
final class StockTable {
  /** When free stock of a component grows, and what has come in by then. */
  final int[][] time;

  final int[][] level;

  /** What is in the house from the start and lasts. */
  final int[] atHand;

  /** Sources of a component of which a free lot expires within the horizon. */
  final List<Optional<Shelf>> expiring = new ArrayList<>();

  private final List<Shelf> shelves = new ArrayList<>();
  private final Map<Key, Integer> numbers = new HashMap<>();
  private final List<String> names = new ArrayList<>();

  private record Key(Component component, String what) {}

  StockTable(Problem problem) {
    int end = problem.plant().hours().endMin();
    Map<Key, Boolean> counted = new HashMap<>();
    most(problem, counted)
        .forEach(
            (what, most) -> {
              Shelf shelf = Shelf.of(problem, what);
              if (lasting(shelf, end) < most) {
                names.add(what);
                shelves.add(shelf);
              }
            });
    int n = names.size();
    time = new int[n][];
    level = new int[n][];
    atHand = new int[n];
    for (int c = 0; c < n; c++) {
      fill(c, shelves.get(c), problem);
    }
    counted.forEach(
        (key, counts) -> {
          if (counts && names.contains(key.what())) {
            numbers.put(key, names.indexOf(key.what()));
          }
        });
  }

  /** The most that all jobs together can take of each counted component from free stock. */
  private static Map<String, Long> most(Problem problem, Map<Key, Boolean> counted) {
    Stock stock = problem.materials().stock();
    Map<String, Long> most = new LinkedHashMap<>();
    for (Job job : problem.jobs()) {
      Map<String, Long> ofJob = new LinkedHashMap<>();
      for (Option option : job.options()) {
        for (Take take : option.making().takes()) {
          Key key = new Key(take.component(), take.insert());
          if (counted.computeIfAbsent(key, k -> stock.counts(k.component(), k.what()))) {
            ofJob.merge(take.insert(), (long) take.pieces() + take.startupPieces(), Math::max);
          }
        }
      }
      ofJob.forEach((what, pieces) -> most.merge(what, pieces, Long::sum));
    }
    return most;
  }

  private static boolean free(Source source) {
    return source.reservedFor().isEmpty();
  }

  private static long lasting(Shelf shelf, int end) {
    return shelf.sources().stream()
        .filter(s -> free(s) && s.usableMin() == 0 && s.expiresMin() >= end)
        .mapToLong(Source::pieces)
        .sum();
  }

  private void fill(int component, Shelf shelf, Problem problem) {
    int end = problem.plant().hours().endMin();
    int start = problem.plant().hours().startMin();
    List<Source> supplies =
        shelf.sources().stream().filter(s -> free(s) && s.expiresMin() >= end).toList();
    time[component] = supplies.stream().mapToInt(Source::usableMin).toArray();
    level[component] = new int[supplies.size()];
    long sum = 0;
    for (int i = 0; i < supplies.size(); i++) {
      sum = Math.min(Spans.FAR, sum + supplies.get(i).pieces());
      level[component][i] = (int) sum;
      if (time[component][i] == 0) {
        atHand[component] = (int) sum;
      }
    }
    boolean expires =
        shelf.sources().stream()
            .anyMatch(
                s -> free(s) && s.pieces() > 0 && s.expiresMin() < end && s.expiresMin() > start);
    expiring.add(expires ? Optional.of(shelf) : Optional.empty());
  }

  /**
   * Has receipts come in later than expected.
   *
   * @param laterMin minutes by receipt, in the order of the stock; negative for sooner
   */
  void later(Problem problem, int[] laterMin) {
    expiring.clear();
    for (int c = 0; c < names.size(); c++) {
      fill(c, shelves.get(c).later(problem, names.get(c), laterMin), problem);
    }
  }

  int size() {
    return names.size();
  }

  String name(int component) {
    return names.get(component);
  }

  /** The number of the component of a take that can run short, or -1. */
  int number(Take take) {
    return numbers.getOrDefault(new Key(take.component(), take.insert()), -1);
  }

  /** True when a free lot of any component expires within the horizon. */
  boolean anyExpires() {
    return expiring.stream().anyMatch(Optional::isPresent);
  }

  /** True when a free lot of the component expires within the horizon. */
  boolean expires(int component) {
    return expiring.get(component).isPresent();
  }
}
