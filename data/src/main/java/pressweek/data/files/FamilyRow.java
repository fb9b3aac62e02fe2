package pressweek.data.files;

/**
 * A row of {@code family.csv}: one of the items that a family mold makes in each shot.
 *
 * @param at where it stands
 * @param mold mold
 * @param item item code
 * @param cavities pieces of it in each shot
 */
public record FamilyRow(At at, String mold, String item, int cavities) {}
