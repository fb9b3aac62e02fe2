package pressweek.data.problem;

/**
 * How a press is set up. An empty field means nothing there (a press as it stands) or anything (a
 * recorded change).
 *
 * @param mold mold
 * @param tooling tooling set in the mold
 * @param resin resin in the barrel
 * @param colour colour in the barrel
 */
public record Setup(String mold, String tooling, String resin, String colour) {}
