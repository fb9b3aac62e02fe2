package pressweek.data.week;

/**
 * What an order line still needs.
 *
 * @param fromStock pieces from finished stock
 * @param made pieces made by a run in progress
 * @param needed pieces still to make; 0 for none
 */
record Netted(int fromStock, int made, int needed) {}
