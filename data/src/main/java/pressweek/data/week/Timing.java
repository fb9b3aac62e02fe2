package pressweek.data.week;

/**
 * What is known of a shot of a mold with a resin on a press.
 *
 * @param cycleMillis milliseconds a shot, loading counted
 * @param scrapPct scrap, percent of all parts
 * @param startupShots shots thrown away after a change
 * @param operatorThousandths thousandths of an operator
 * @param recorded true when a recorded cycle stands behind it, false for an estimate
 * @param basis where the cycle came from
 */
record Timing(
    int cycleMillis,
    double scrapPct,
    int startupShots,
    int operatorThousandths,
    boolean recorded,
    String basis) {}
