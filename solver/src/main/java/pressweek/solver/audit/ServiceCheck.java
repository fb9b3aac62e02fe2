package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.plan.Rule;
import pressweek.data.problem.MoldService;

/**
 * SERVICE: a mold is serviced, off every press, before a run that needs more shots than it may
 * still make.
 */
final class ServiceCheck {
  private final Week week;
  private final Findings findings;

  private ServiceCheck(Week week, Findings findings) {
    this.week = week;
    this.findings = findings;
  }

  static void check(Week week, Findings findings) {
    ServiceCheck check = new ServiceCheck(week, findings);
    Set<String> seen = new HashSet<>();
    for (MoldService row : week.problem().arranged().services()) {
      if (seen.add(row.mold())) {
        check.mold(row);
      }
    }
  }

  private void mold(MoldService row) {
    List<Hold> holds = new ArrayList<>();
    week.walks().forEach(walk -> holds.addAll(walk.holds()));
    holds.removeIf(hold -> !hold.mold().equals(row.mold()));
    List<Stay> stays =
        week.stays().stream()
            .filter(stay -> stay.run().mold().equals(row.mold()))
            .sorted(Comparator.comparingInt(stay -> stay.run().startMin()))
            .toList();
    long left = row.shotsLeft();
    for (Stay stay : stays) {
      long shots = shots(stay);
      if (shots > left && left < row.shotsBetween() && !stay.running()) {
        serviced(stay, row, left, holds);
        left = row.shotsBetween();
      }
      left -= shots;
    }
  }

  private static long shots(Stay stay) {
    int startup = stay.due().exchanges() ? stay.option().making().startupShots() : 0;
    return (long) stay.option().making().shots() + startup;
  }

  /** The mold has been off every press for as long as a service takes before it was mounted. */
  private void serviced(Stay stay, MoldService row, long left, List<Hold> holds) {
    boolean mounts = !stay.step().before().mold().equals(row.mold());
    long begins = stay.run().change().startMin();
    long offMin =
        holds.stream()
            .filter(hold -> hold.fromMin() < begins)
            .mapToLong(Hold::toMin)
            .max()
            .orElse(week.problem().plant().hours().startMin());
    boolean off = mounts && offMin <= begins;
    if (off && begins - offMin >= row.minutes()) {
      return;
    }
    String gap =
        !off
            ? "it is not taken off before that"
            : "it is off only from %s to %s"
                .formatted(week.clock().text(offMin), week.clock().text(begins, offMin));
    findings.add(
        Rule.SERVICE,
        stay.run(),
        "makes %d shots, mold %s has %d left to its service of %d min; %s"
            .formatted(shots(stay), row.mold(), left, row.minutes(), gap));
  }
}
