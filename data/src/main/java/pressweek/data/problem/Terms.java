package pressweek.data.problem;

import java.util.List;

/**
 * Further terms of a plan. Money is thousandths of a cent; 0 for what is not charged.
 *
 * @param campaignMin least run minutes of a campaign; 0 for no such rule
 * @param shortCampaignHour each hour that a campaign is shorter
 * @param closeHour each hour from the start of the plan to the end of its last run
 * @param movedRun a run that moves against an earlier plan
 * @param earlier where the runs of that plan were
 */
public record Terms(
    int campaignMin, long shortCampaignHour, long closeHour, long movedRun, List<Place> earlier) {
  /** No further terms. */
  public static final Terms NONE = new Terms(0, 0, 0, 0, List.of());

  public Terms {
    earlier = List.copyOf(earlier);
  }

  /**
   * Where a run was in an earlier plan.
   *
   * @param job {@code order/line}
   * @param press press
   * @param startMin start of its run, minutes since 1970 UTC
   */
  public record Place(String job, String press, int startMin) {}
}
