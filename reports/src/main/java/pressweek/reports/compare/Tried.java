package pressweek.reports.compare;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.problem.OrderLine;
import pressweek.reports.schedule.PlanBook;

/**
 * A scenario, or the folder as it stands, and the plans that were made of it.
 *
 * @param name name
 * @param words what it is, in a sentence; may be empty
 * @param folder name of its folder in the output
 * @param notes what makes it hard to compare, in sentences
 * @param plans its plans by seed
 */
public record Tried(
    String name, String words, String folder, List<String> notes, List<Planned> plans) {
  public Tried {
    notes = List.copyOf(notes);
    plans = List.copyOf(plans);
  }

  /**
   * A plan of a scenario.
   *
   * @param seed seed of its search
   * @param book the plan
   * @param figures its figures
   * @param findings hard rules that an audit found broken, in words; such a plan is not shown
   * @param promises order lines whose promise is not kept, where that is all that was found
   */
  public record Planned(
      long seed,
      PlanBook book,
      PlanFigures figures,
      List<String> findings,
      List<OrderLine> promises) {
    public Planned {
      findings = List.copyOf(findings);
      promises = List.copyOf(promises);
    }

    /** How many of these lines are ready when they are due, or before. */
    int onTime(Set<String> lines) {
      Map<String, Integer> due = new HashMap<>();
      book.plan().problem().jobs().forEach(j -> due.put(j.id(), j.deadline().dueMin()));
      return (int)
          book.plan().runs().stream()
              .filter(r -> lines.contains(r.job()))
              .filter(r -> r.readyMin() <= due.getOrDefault(r.job(), Integer.MIN_VALUE))
              .count();
    }

    /** True when the audit found nothing. */
    public boolean sound() {
      return findings.isEmpty();
    }
  }

  /** The plans that keep all hard rules. */
  public List<Planned> sound() {
    return plans.stream().filter(Planned::sound).toList();
  }

  /** How many plans break a hard rule. */
  public int broken() {
    return plans.size() - sound().size();
  }

  /**
   * The order lines whose promises stand against every plan; none when a plan is sound, or breaks
   * another rule.
   */
  public List<OrderLine> promisesAgainst() {
    boolean only = plans.stream().noneMatch(p -> p.promises().isEmpty());
    return only
        ? plans.stream().flatMap(p -> p.promises().stream()).distinct().toList()
        : List.of();
  }

  /** The cheapest of the sound plans, the first seed of several; empty when there is none. */
  public Optional<Planned> best() {
    return sound().stream().min(Comparator.comparingLong(p -> p.figures().avoidableCost()));
  }

  /** The values of a figure over the sound plans whose seeds the other has, too. */
  public List<Double> values(Figure figure, Tried beside) {
    Set<Long> seeds = beside.sound().stream().map(Planned::seed).collect(Collectors.toSet());
    return sound().stream()
        .filter(p -> seeds.contains(p.seed()))
        .map(p -> figure.of(p.figures()))
        .toList();
  }

  /** The order lines of its week, those that could not be planned as well; none without a plan. */
  Set<String> lines() {
    Set<String> lines = new HashSet<>();
    best()
        .ifPresent(
            b -> {
              b.book().plan().problem().jobs().forEach(job -> lines.add(job.id()));
              b.book().plan().unplaced().forEach(line -> lines.add(line.id()));
            });
    return lines;
  }

  /** How many of these lines each sound plan has on time whose seed the other has, too. */
  List<Double> onTime(Set<String> lines, Tried beside) {
    Set<Long> seeds = beside.sound().stream().map(Planned::seed).collect(Collectors.toSet());
    return sound().stream()
        .filter(p -> seeds.contains(p.seed()))
        .map(p -> (double) p.onTime(lines))
        .toList();
  }

  /** How sure the difference of a figure to another is. */
  public Certainty certainty(Figure figure, Tried base) {
    return Certainty.of(base.values(figure, this), values(figure, base));
  }

  /** How many seeds both have sound plans of. */
  public int pairs(Tried base) {
    return values(Figure.LINES, base).size();
  }
}
