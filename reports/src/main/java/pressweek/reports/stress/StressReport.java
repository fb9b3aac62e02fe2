package pressweek.reports.stress;

import pressweek.data.plan.Plan;
import pressweek.data.stress.Stressed;

/**
 * A plan and how sure it is.
 *
 * @param plan the plan
 * @param stressed what came of its replays
 */
public record StressReport(Plan plan, Stressed stressed) {}
