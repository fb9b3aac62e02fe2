package pressweek.data.stress;

/**
 * Another plan replayed under the same luck. Differences are this plan less the other.
 *
 * @param number number of the other plan
 * @param totals what the other comes to
 * @param onTimeLines lines more on time
 * @param lateHours more late hours
 * @param costs more avoidable cost, thousandths of a cent
 * @param better share of replays in which this plan has more lines on time, or as many and fewer
 *     late hours
 */
public record Rival(
    String number,
    Totals totals,
    Estimate onTimeLines,
    Estimate lateHours,
    Estimate costs,
    Chance better) {}
