package pressweek.reports.stress;

import pressweek.data.plan.Plan;
import pressweek.data.stress.Stressed;

/**
 * A plan and how sure it is.
 *
 * @param plan the plan
 * @param stressed what came of its replays
 * @param file the file that it came from
 * @param other the file of the plan that it is compared with; empty for none
 */
public record StressReport(Plan plan, Stressed stressed, String file, String other) {}
