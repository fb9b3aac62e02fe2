package pressweek.solver.why;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Receipt;

/** What is behind a wait, in words. */
final class Behind {
  private static final int SHOWN = 3;

  private final Plan plan;

  Behind(Plan plan) {
    this.plan = plan;
  }

  /** Which run, downtime or delivery a wait is for; empty where nothing more is known. */
  String words(Run run, Wait wait) {
    return switch (wait.cause()) {
      case MOLD -> moldWith(run, wait);
      case SETTER -> changesIn(run, wait);
      case OPERATOR -> runsIn(run, wait);
      case INSERTS -> delivery(wait);
      case MOLD_AWAY -> away(Downtime.Kind.MOLD, wait.what(), wait);
      case SHIFT -> away(Downtime.Kind.PRESS, run.press(), wait);
      case CHOICE -> wait.what().isEmpty() ? "keeps the time that it had before" : "";
      case PROMISED -> wait.what().isEmpty() ? "its start is promised" : "mold is promised";
      case PRESS, INSPECTOR, TOOLING, SERVICE, DRYER, LINKED, EARLIEST, NEIGHBOUR, HORIZON -> "";
    };
  }

  private String moldWith(Run run, Wait wait) {
    return plan.runs().stream()
        .filter(r -> r.mold().equals(wait.what()) && !r.press().equals(run.press()))
        .filter(r -> r.startMin() < wait.toMin() && r.endMin() > wait.fromMin())
        .max(Comparator.comparingInt(Run::endMin))
        .map(r -> "with " + r.job() + " on " + r.press())
        .orElseGet(
            () ->
                plan.dismounts().stream()
                    .filter(d -> d.mold().equals(wait.what()))
                    .filter(d -> d.startMin() < wait.toMin() && d.endMin() > wait.fromMin())
                    .findFirst()
                    .map(d -> "comes off " + d.press())
                    .orElse(""));
  }

  private String changesIn(Run run, Wait wait) {
    return few(
        plan.runs().stream()
            .filter(r -> !r.id().equals(run.id()) && r.change().minutes() > 0)
            .filter(
                r -> r.change().startMin() < wait.toMin() && r.change().endMin() > wait.fromMin())
            .map(r -> "change for " + r.job() + " on " + r.press())
            .toList());
  }

  private String runsIn(Run run, Wait wait) {
    return few(
        plan.runs().stream()
            .filter(r -> !r.press().equals(run.press()))
            .filter(r -> r.startMin() < wait.toMin() && r.endMin() > wait.fromMin())
            .map(r -> r.job() + " on " + r.press())
            .toList());
  }

  private static String few(List<String> all) {
    String shown = all.stream().limit(SHOWN).collect(Collectors.joining(", "));
    return all.size() > SHOWN ? shown + " and " + (all.size() - SHOWN) + " more" : shown;
  }

  private String delivery(Wait wait) {
    List<String> components = List.of(wait.what().split("\\|"));
    return plan.problem().materials().stock().receipts().stream()
        .filter(r -> components.contains(r.what()) && r.usableMin() <= wait.toMin())
        .max(Comparator.comparingInt(Receipt::usableMin))
        .map(r -> "comes with a delivery of " + r.quantity() + " " + r.what())
        .orElse("");
  }

  private String away(Downtime.Kind kind, String id, Wait wait) {
    Optional<Downtime> away =
        plan.problem().floor().downtime().stream()
            .filter(d -> d.kind() == kind && d.id().equals(id))
            .filter(d -> d.fromMin() < wait.toMin() && d.toMin() > wait.fromMin())
            .findFirst();
    return away.map(d -> d.reason().isBlank() ? "away" : "away: " + d.reason()).orElse("");
  }
}
