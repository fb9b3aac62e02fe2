package pressweek.data.stress;

/**
 * How sure an order line of a plan is. A line that was split has one for each part.
 *
 * @param line {@code order/line}
 * @param run run number
 * @param press its press
 * @param dueMin when it is due, minutes since 1970 UTC
 * @param plannedMin when the plan has it ready
 * @param onTime share of replays in which it is ready by its due time
 * @param lateHours mean hours late over all replays, 0 where it is on time
 * @param ninetyMin minute by which it is ready in nine replays of ten
 */
public record LineChance(
    String line,
    String run,
    String press,
    int dueMin,
    int plannedMin,
    Chance onTime,
    double lateHours,
    int ninetyMin) {}
