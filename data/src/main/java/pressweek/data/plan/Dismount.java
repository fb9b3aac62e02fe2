package pressweek.data.plan;

/**
 * A mold taken off a press because it is needed on another.
 *
 * @param press press that holds it
 * @param mold mold
 * @param startMin start, minutes since 1970 UTC
 * @param endMin end
 * @param minutes working minutes
 * @param cost thousandths of a cent, by {@link Rule#CHANGE}
 */
public record Dismount(
    String press, String mold, int startMin, int endMin, int minutes, long cost) {}
