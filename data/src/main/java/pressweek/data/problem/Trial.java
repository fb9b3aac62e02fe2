package pressweek.data.problem;

import java.util.OptionalInt;

/**
 * A mold trial: it books a press, a mold and setters, and leaves the press as it found it.
 *
 * @param press press
 * @param mold mold
 * @param fromMin first minute, since 1970 UTC
 * @param toMin first minute after it
 * @param setters setters who are with it all the time
 * @param reason in words
 * @param inspectors inspectors who are with it all the time; empty for none
 */
public record Trial(
    String press,
    String mold,
    int fromMin,
    int toMin,
    int setters,
    String reason,
    OptionalInt inspectors) {}
