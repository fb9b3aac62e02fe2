package pressweek.data.plan;

/**
 * Inserts or another component to bring to a press.
 *
 * @param run run number
 * @param press press
 * @param needByMin when they must be there, minutes since 1970 UTC
 * @param insert insert part, or the id of another component
 * @param lot lot to take from; empty when they come from a receipt that is not in the house yet or
 *     stock is not checked
 * @param bin bin of the lot; empty likewise
 * @param receiptMin when the receipt that they come from may be used; equals {@code needByMin} or
 *     earlier; 0 for a lot in the house
 * @param pieces pieces, with scrap, start-up, samples and loss; grams of resin and masterbatch
 */
public record Pull(
    String run,
    String press,
    int needByMin,
    String insert,
    String lot,
    String bin,
    int receiptMin,
    int pieces) {}
