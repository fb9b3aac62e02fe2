package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Drying;

/** DRYER: each run of a material that is dried has one dryer of its press, and no other run has. */
final class DryerCheck {
  private final Week week;
  private final Findings findings;
  private final Drying drying;
  private final Map<String, List<Fed>> fed = new LinkedHashMap<>();

  private DryerCheck(Week week, Findings findings) {
    this.week = week;
    this.findings = findings;
    drying = week.problem().arranged().drying();
  }

  static void check(Week week, Findings findings) {
    DryerCheck check = new DryerCheck(week, findings);
    Map<String, List<PlantWide.DryerUse>> uses = new HashMap<>();
    for (PlantWide.DryerUse use : week.plan().head().plantWide().dryings()) {
      uses.computeIfAbsent(use.run(), run -> new ArrayList<>()).add(use);
    }
    Set<String> seen = new HashSet<>();
    for (Stay stay : week.stays()) {
      if (seen.add(stay.run().id())) {
        check.stay(stay, uses.getOrDefault(stay.run().id(), List.of()));
      }
    }
    check.runs();
    for (Drying.Feed feed : check.drying.dryers()) {
      List<Fed> ofDryer = check.fed.getOrDefault(feed.dryer(), List.of());
      new DryerWalk(feed, ofDryer, week, findings).check();
    }
  }

  /** What must be dried of a resin and colour, if anything. */
  static Optional<Drying.Dried> dried(Drying drying, String resin, String colour) {
    return drying.materials().stream()
        .filter(row -> row.resin().equals(resin) && row.colour().equals(colour))
        .findFirst();
  }

  private void stay(Stay stay, List<PlantWide.DryerUse> uses) {
    Optional<Drying.Dried> due = dried(drying, stay.job().resin(), stay.job().colour());
    List<String> may =
        drying.dryers().stream()
            .filter(feed -> feed.presses().contains(stay.run().press()))
            .map(Drying.Feed::dryer)
            .toList();
    List<String> named = uses.stream().map(PlantWide.DryerUse::dryer).toList();
    if (due.isEmpty() || may.isEmpty()) {
      if (!named.isEmpty()) {
        findings.add(
            Rule.DRYER, stay.run(), "needs no dryer, the plan names " + String.join(", ", named));
      }
      return;
    }
    if (named.size() != 1 || !may.contains(named.get(0))) {
      findings.add(
          Rule.DRYER,
          stay.run(),
          "needs one dryer of its press (%s), the plan names %s"
              .formatted(
                  String.join(", ", may), named.isEmpty() ? "none" : String.join(", ", named)));
    }
    uses.stream()
        .filter(use -> may.contains(use.dryer()))
        .limit(1)
        .forEach(
            use ->
                fed.computeIfAbsent(use.dryer(), dryer -> new ArrayList<>())
                    .add(new Fed(stay, due.get(), use)));
  }

  /** Each drying is of a run of the plan, and they are listed by the start of their runs. */
  private void runs() {
    Map<String, Run> runs = new HashMap<>();
    week.plan().runs().forEach(run -> runs.putIfAbsent(run.id(), run));
    long last = Long.MIN_VALUE;
    boolean inOrder = true;
    for (PlantWide.DryerUse use : week.plan().head().plantWide().dryings()) {
      Run run = runs.get(use.run());
      if (run == null) {
        findings.add(
            Rule.DRYER,
            use.run(),
            "dryer %s feeds run %s, which is not in the plan".formatted(use.dryer(), use.run()));
      } else {
        inOrder &= last <= run.startMin();
        last = run.startMin();
      }
    }
    if (!inOrder) {
      findings.add(Rule.FIGURES, "plan", "dryings are not listed by the start of their runs");
    }
  }
}
