package pressweek.data.plan;

/**
 * One entry of the ledger.
 *
 * @param rule rule that charges
 * @param amount thousandths of a cent
 * @param because how it came about, in words
 */
public record Charge(Rule rule, long amount, String because) {}
