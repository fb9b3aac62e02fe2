package pressweek.data.problem;

/**
 * A press as it stands when the plan starts.
 *
 * @param press press
 * @param setup what is in it; empty fields for nothing or not known
 * @param clearedForFood true when it is cleared for food-grade work
 * @param job the job that is running ({@code order/line}); empty for none
 */
public record PressState(String press, Setup setup, boolean clearedForFood, String job) {}
