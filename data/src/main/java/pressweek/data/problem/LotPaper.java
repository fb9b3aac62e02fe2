package pressweek.data.problem;

/**
 * The paper that came with a lot.
 *
 * @param what material
 * @param lot lot number
 * @param certificate where it is kept, for example the number of a plating certificate
 */
public record LotPaper(String what, String lot, String certificate) {}
