package pressweek.reports.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pressweek.data.problem.Rates;
import pressweek.reports.hours.PlantClock;

/**
 * The folder as it stands and scenarios beside it.
 *
 * @param plant name of the plant; may be empty
 * @param base the folder as it stands
 * @param scenarios scenarios, in the order of the command
 * @param effort how each plan was searched for, in words
 * @param stopped true when it was ended early
 * @param madeMin when it was made, minutes since 1970 UTC
 */
public record SideBySide(
    String plant, Tried base, List<Tried> scenarios, String effort, boolean stopped, int madeMin) {
  public SideBySide {
    scenarios = List.copyOf(scenarios);
  }

  /** The folder as it stands, then the scenarios. */
  public List<Tried> all() {
    return Stream.concat(Stream.of(base), scenarios.stream()).toList();
  }

  /** Those with a plan that keeps all hard rules. */
  public List<Tried> shown() {
    return all().stream().filter(t -> t.best().isPresent()).toList();
  }

  /** The plant's clock; empty when there is no sound plan at all. */
  public Optional<PlantClock> clock() {
    return shown().stream().findFirst().flatMap(Tried::best).map(p -> p.book().clock());
  }

  /** The rates by which money is shown; empty when any side has none, or another currency. */
  public Optional<Rates> money() {
    List<Rates> rates = new ArrayList<>();
    shown().forEach(t -> t.best().ifPresent(p -> rates.add(rates(p))));
    boolean same =
        rates.stream().allMatch(Rates::shown)
            && rates.stream().map(Rates::currency).distinct().count() == 1;
    return same ? rates.stream().findFirst() : Optional.empty();
  }

  private static Rates rates(Tried.Planned planned) {
    return planned.book().plan().problem().plant().rates();
  }

  /** The figures that are shown: money only with rates, moves only against a promised plan. */
  public List<Figure> figures() {
    boolean money = money().isPresent();
    boolean moves =
        shown().stream()
            .anyMatch(t -> t.best().flatMap(p -> p.figures().flow().moved()).isPresent());
    return Stream.of(Figure.values())
        .filter(f -> money || f.unit() != Figure.Unit.MONEY)
        .filter(f -> moves || f != Figure.MOVED)
        .toList();
  }

  /** Most seeds that any side has plans of. */
  public int seeds() {
    return all().stream().mapToInt(t -> t.plans().size()).max().orElse(0);
  }
}
