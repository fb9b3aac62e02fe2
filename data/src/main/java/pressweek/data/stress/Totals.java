package pressweek.data.stress;

/**
 * What a week comes to over its replays. Lines that the plan leaves out are never on time.
 *
 * @param onTimeLines lines on time
 * @param lateHours hours late, summed over the lines
 * @param cost avoidable cost, thousandths of a cent
 * @param allOnTime share of replays in which every planned line is on time
 */
public record Totals(Estimate onTimeLines, Estimate lateHours, Estimate cost, Chance allOnTime) {}
