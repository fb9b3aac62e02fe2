package pressweek.data.problem;

/**
 * An inbound delivery.
 *
 * @param what insert part or other component
 * @param quantity pieces; grams of resin and masterbatch
 * @param expectedMin when it arrives, minutes since 1970 UTC
 * @param usableMin when it has been inspected and may be used
 */
public record Receipt(String what, int quantity, int expectedMin, int usableMin) {}
