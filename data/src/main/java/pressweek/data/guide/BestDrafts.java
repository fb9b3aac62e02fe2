package pressweek.data.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.Draft.Gap;
import pressweek.data.guide.RuleBook.Meaning;
import pressweek.data.guide.SlotWriter.Written;

/**
 * The few best of many drafts: those with the fewest gaps, then those which say least beyond what
 * is known, then the first ones.
 */
final class BestDrafts implements DraftSearch.Visitor {
  private static final Comparator<Draft> BEST_FIRST =
      Comparator.comparingInt((Draft draft) -> draft.gaps().size())
          .thenComparingInt(draft -> draft.implied().size());

  private final Map<String, String> known;
  private final int most;
  private final List<Draft> best = new ArrayList<>();
  private String family = "";
  private List<GuideRule> rules = List.of();

  BestDrafts(Map<String, String> known, int most) {
    this.known = known;
    this.most = most;
  }

  /** Says of which family the next codes are. */
  void of(Family next, List<GuideRule> nextRules) {
    family = next.name();
    rules = nextRules;
  }

  List<Draft> drafts() {
    return List.copyOf(best);
  }

  @Override
  public boolean wants(int gaps, int unasked) {
    if (best.size() < most) {
      return true;
    }
    Draft last = best.get(best.size() - 1);
    int more = Integer.compare(gaps, last.gaps().size());
    return more < 0 || more == 0 && unasked < last.implied().size();
  }

  /** What is known, without what a rule gives once an open attribute has its value. */
  private Map<String, String> sayable(Set<String> open) {
    if (open.isEmpty()) {
      return known;
    }
    Map<String, String> sure = new LinkedHashMap<>(known);
    for (GuideRule rule : rules) {
      if (rule.sets() && rule.asksFor(open)) {
        rule.what().forEach(clause -> sure.remove(clause.attribute(), clause.values().get(0)));
      }
    }
    return sure;
  }

  @Override
  public boolean take(Written code, Meaning meaning, List<Gap> gaps) {
    Set<String> open = DraftSearch.open(gaps);
    Map<String, String> values = meaning.values();
    values.keySet().removeIf(name -> open.contains(name) && !known.containsKey(name));
    boolean good =
        meaning.faults().stream().allMatch(fault -> open.contains(fault.attribute()))
            && Values.covers(values, sayable(open));
    if (!good) {
      return false;
    }
    Set<String> implied = new HashSet<>();
    code.says()
        .forEach(
            (name, value) -> {
              if (!known.containsKey(name) && !value.isEmpty()) {
                implied.add(name);
              }
            });
    Draft draft = new Draft(code.text(), family, values, gaps, implied);
    int place = best.size();
    while (place > 0 && BEST_FIRST.compare(draft, best.get(place - 1)) < 0) {
      place--;
    }
    best.add(place, draft);
    if (best.size() > most) {
      best.remove(most);
    }
    return false;
  }
}
