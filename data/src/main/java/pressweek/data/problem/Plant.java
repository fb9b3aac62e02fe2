package pressweek.data.problem;

/**
 * The plant's own figures.
 *
 * @param name name of the plant
 * @param hours when it works
 * @param crew what is checked of the crew
 * @param shipping when the truck leaves
 * @param rates what things cost
 * @param changes change minutes and purge
 * @param moveToleranceMin minutes by which a promised run may shift
 * @param barrelDefaultG barrel capacity in grams for presses without a shot weight, for purge
 */
public record Plant(
    String name,
    Hours hours,
    Crew crew,
    Shipping shipping,
    Rates rates,
    ChangeTable changes,
    int moveToleranceMin,
    int barrelDefaultG) {}
