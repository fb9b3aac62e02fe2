package pressweek.solver.timing;

import java.util.Arrays;
import pressweek.data.problem.Terms;

/** How long the mold on each press has run since it was mounted in the plan. */
final class Campaigns {
  private final Terms terms;
  private final int[] minutes;

  Campaigns(Terms terms, int presses) {
    this.terms = terms;
    minutes = new int[presses];
  }

  boolean charged() {
    return terms.campaignMin() > 0 && terms.shortCampaignHour() > 0;
  }

  void name(Snapshot.Changing all) {
    all.add(minutes);
  }

  /** Molds that are on presses at the start of the plan are in no campaign of it. */
  void reset() {
    Arrays.fill(minutes, -1);
  }

  /** Minutes that the campaign of a press lacks; 0 when it is long enough or began before. */
  int missing(int press) {
    return minutes[press] < 0 ? 0 : Math.max(0, terms.campaignMin() - minutes[press]);
  }

  /** Minutes that it has run. */
  int minutes(int press) {
    return minutes[press];
  }

  /** What a campaign costs that lacks so many minutes. */
  long charge(int missing) {
    return terms.shortCampaignHour() * missing / 60;
  }

  void begin(int press) {
    minutes[press] = 0;
  }

  /** The mold has been taken off. */
  void end(int press) {
    minutes[press] = -1;
  }

  void run(int press, int runMin) {
    if (minutes[press] >= 0) {
      minutes[press] += runMin;
    }
  }
}
