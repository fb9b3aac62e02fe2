package pressweek.data.problem;

/**
 * What things cost. Money is thousandths of a cent (1.00 is 100 000).
 *
 * @param currency ISO 4217 code
 * @param shown false when the plant gave no rates: the plan ranks by built-in weights and hides
 *     money
 * @param lateStep each shipping cut-off missed by an ordinary line
 * @param lateDay each day late, counted by the minute
 * @param changeHour an hour of change or dismount
 * @param purgeKg a kilogram purged or lost at start-up of a resin without a price
 * @param keptPressHour an hour of other work on a press kept for food-grade work
 * @param unplaced an ordinary line that is not placed within the horizon, beside its lateness up to
 *     there
 */
public record Rates(
    String currency,
    boolean shown,
    long lateStep,
    long lateDay,
    long changeHour,
    long purgeKg,
    long keptPressHour,
    long unplaced) {}
