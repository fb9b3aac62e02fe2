package pressweek.data.floor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Person;
import pressweek.data.problem.Press;
import pressweek.data.problem.Unplaced;

/** The things of a plan that an event may name. */
final class PlanThings {
  static final String SETTER = "setter";
  static final String OPERATOR = "operator";

  private final Plan plan;
  private final Map<String, Set<String>> lines = new LinkedHashMap<>();

  PlanThings(Plan plan) {
    this.plan = plan;
    for (Job job : plan.problem().jobs()) {
      add(job.line().order(), job.id());
    }
    for (Unplaced line : plan.unplaced()) {
      add(line.order(), line.id());
    }
  }

  private void add(String order, String line) {
    lines.computeIfAbsent(order, o -> new LinkedHashSet<>()).add(line);
  }

  List<String> presses() {
    return plan.problem().floor().presses().stream().map(Press::id).toList();
  }

  List<String> molds() {
    return plan.problem().floor().molds().stream().map(Mold::id).toList();
  }

  List<String> lots() {
    return plan.problem().materials().stock().lots().stream().map(Lot::id).distinct().toList();
  }

  /** {@code setter}, {@code operator} and everybody who is listed. */
  List<String> people() {
    List<String> names = new ArrayList<>(List.of(SETTER, OPERATOR));
    plan.problem()
        .plant()
        .crew()
        .people()
        .ifPresent(all -> all.stream().map(Person::name).forEach(names::add));
    return names;
  }

  List<String> orders() {
    return List.copyOf(lines.keySet());
  }

  /** Lines of an order as {@code order/line}; none for an order that the plan does not know. */
  List<String> lines(String order) {
    return List.copyOf(lines.getOrDefault(order, Set.of()));
  }

  /** Those of some lines that are a line or a part of it: {@code 4711/1}, {@code 4711/1/2}. */
  static List<String> of(Collection<String> lines, String line) {
    return lines.stream().filter(l -> l.equals(line) || l.startsWith(line + "/")).toList();
  }

  /** Pieces of an order line that the plan makes; 0 where it makes none. */
  int good(String line) {
    return plan.problem().jobs().stream()
        .filter(job -> job.id().equals(line))
        .findFirst()
        .map(job -> job.quantity().good())
        .orElse(0);
  }
}
