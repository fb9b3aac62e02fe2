package pressweek.data.problem;

/**
 * What a family mold makes beside the item that it is run for; it goes to stock.
 *
 * @param mold mold
 * @param item item of the other cavities
 * @param perShot pieces of it in each shot
 */
public record Surplus(String mold, String item, int perShot) {}
