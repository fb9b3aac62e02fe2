package pressweek.data.problem;

/**
 * A device that a mold needs while it is being mounted and while it runs.
 *
 * @param mold mold
 * @param device a counted thing
 */
public record DeviceNeed(String mold, String device) {}
