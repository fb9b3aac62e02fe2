package pressweek.data.plan;

/**
 * What a simple way of planning the same week would give, through the same timing and the same
 * charges.
 *
 * @param name the way, in words
 * @param avoidableCost thousandths of a cent
 * @param lateLines lines late or left out
 * @param changeMin minutes of change
 */
public record Reference(String name, long avoidableCost, int lateLines, long changeMin) {}
