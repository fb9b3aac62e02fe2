package pressweek.reports.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Job;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.reports.schedule.Headline;

/** What makes two weeks hard to compare. */
public final class Notes {
  private Notes() {}

  /** Sentences about a scenario's week beside that of the folder as it stands. */
  public static List<String> of(Problem base, Problem scenario) {
    List<String> notes = new ArrayList<>();
    Set<String> was = ids(base);
    Set<String> is = ids(scenario);
    Set<String> more = new HashSet<>(is);
    more.removeAll(was);
    Set<String> fewer = new HashSet<>(was);
    fewer.removeAll(is);
    if (!more.isEmpty()) {
      notes.add("It has " + Headline.counted(more.size(), "further line") + " to make.");
    }
    if (!fewer.isEmpty()) {
      notes.add("It has " + Headline.counted(fewer.size(), "line") + " fewer to make.");
    }
    int other = changed(base, scenario);
    if (other > 0) {
      notes.add(
          "The quantity, due time or weight of "
              + Headline.counted(other, "order line")
              + (other == 1 ? " is another." : " are others."));
    }
    if (!prices(base, scenario).equals(prices(scenario, base))) {
      notes.add("Its money is by rates of its own.");
    }
    if (base.plant().hours().startMin() != scenario.plant().hours().startMin()
        || base.plant().hours().endMin() != scenario.plant().hours().endMin()) {
      notes.add("It plans another stretch of time.");
    }
    return List.copyOf(notes);
  }

  /**
   * Overtime that only the scenario has and that no plan of it opens: what is not worked changes
   * nothing.
   *
   * @param plans the plans of the scenario; nothing is said of none
   */
  public static List<String> unopened(Problem base, Problem scenario, List<Plan> plans) {
    Set<String> idle = overtime(scenario);
    idle.removeAll(overtime(base));
    plans.forEach(p -> p.head().plantWide().opened().forEach(o -> idle.remove(o.shift())));
    return plans.isEmpty()
        ? List.of()
        : idle.stream()
            .map(shift -> "None of its plans opens overtime shift \"" + shift + "\".")
            .toList();
  }

  private static Set<String> overtime(Problem problem) {
    return problem.arranged().opening().overtime().stream()
        .map(Opening.Overtime::shift)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> ids(Problem problem) {
    Set<String> ids = problem.jobs().stream().map(Job::id).collect(Collectors.toSet());
    problem.unplaced().stream().map(Unplaced::id).forEach(ids::add);
    return ids;
  }

  private static int changed(Problem base, Problem scenario) {
    Map<String, Job> was =
        base.jobs().stream().collect(Collectors.toMap(Job::id, Function.identity(), (a, b) -> a));
    int changed = 0;
    for (Job job : scenario.jobs()) {
      Job before = was.get(job.id());
      boolean same =
          before == null
              || before.line().quantity() == job.line().quantity()
                  && before.deadline().dueMin() == job.deadline().dueMin()
                  && before.deadline().weightHundredths() == job.deadline().weightHundredths();
      changed += same ? 0 : 1;
    }
    return changed;
  }

  /** Everything that money is counted by, of presses and shifts that the other has, too. */
  private static List<Object> prices(Problem problem, Problem beside) {
    var terms = problem.arranged().terms();
    Map<String, Long> each = rates(problem);
    each.keySet().retainAll(rates(beside).keySet());
    return List.of(
        problem.plant().rates(),
        terms.shortCampaignHour(),
        terms.closeHour(),
        terms.movedRun(),
        each);
  }

  private static Map<String, Long> rates(Problem problem) {
    Map<String, Long> each = new HashMap<>();
    problem.floor().presses().forEach(p -> each.put("press " + p.id(), p.ratePerHour()));
    problem
        .arranged()
        .opening()
        .overtime()
        .forEach(o -> each.put("shift " + o.shift(), o.perHour()));
    return each;
  }
}
