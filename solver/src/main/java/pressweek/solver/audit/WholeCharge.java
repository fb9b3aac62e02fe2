package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Terms;

/**
 * A charge that belongs to no run.
 *
 * @param rule rule that charges
 * @param amount thousandths of a cent
 */
record WholeCharge(Rule rule, long amount) {
  /**
   * What a plan must be charged beside its runs: opened shifts, then short campaigns by press and
   * time, then the close. A charge of nothing is left out.
   */
  static List<WholeCharge> due(Week week) {
    List<WholeCharge> due = new ArrayList<>();
    week.roster().opened().forEach(time -> due.add(overtime(week, time)));
    week.walks().forEach(walk -> due.addAll(campaigns(walk, week.problem().arranged().terms())));
    due.add(close(week));
    due.removeIf(charge -> charge.amount() == 0);
    return due;
  }

  private static WholeCharge overtime(Week week, ShiftTime time) {
    long perHour =
        week.problem().arranged().opening().overtime().stream()
            .filter(row -> row.shift().equals(time.name()))
            .mapToLong(Opening.Overtime::perHour)
            .findFirst()
            .orElse(0);
    long minutes = time.span().toMin() - time.span().fromMin();
    return new WholeCharge(Rule.OVERTIME, Ledger.share(perHour, minutes, 60));
  }

  /** Campaigns that a change begins and another change or a dismount ends. */
  private static List<WholeCharge> campaigns(PressWalk walk, Terms terms) {
    List<WholeCharge> charges = new ArrayList<>();
    long minutes = 0;
    boolean mounted = false;
    String mold = "";
    for (Stay stay : walk.stays()) {
      if (!stay.step().before().mold().equals(stay.run().mold())) {
        if (mounted) {
          charges.add(campaign(terms, minutes));
        }
        mounted = !stay.running();
        mold = stay.run().mold();
        minutes = 0;
      }
      minutes += stay.minutes();
    }
    if (mounted && !walk.holdsAtEnd(mold)) {
      charges.add(campaign(terms, minutes));
    }
    return charges;
  }

  private static WholeCharge campaign(Terms terms, long minutes) {
    long missing = Math.max(0, terms.campaignMin() - minutes);
    return new WholeCharge(
        Rule.SHORT_CAMPAIGN, Ledger.share(terms.shortCampaignHour(), missing, 60));
  }

  private static WholeCharge close(Week week) {
    long start = week.problem().plant().hours().startMin();
    long end = week.plan().runs().stream().mapToLong(Run::endMin).max().orElse(start);
    long perHour = week.problem().arranged().terms().closeHour();
    return new WholeCharge(Rule.CLOSE, Ledger.share(perHour, Math.max(0, end - start), 60));
  }
}
