package pressweek.data.problem;

/**
 * The plant's change minutes and purge factors, from the last good part of one run to the first
 * good part of the next.
 *
 * @param moldMin minutes to take a mold off and put the next on, for molds without a figure of
 *     their own
 * @param dismountPct share of a mold's change minutes that taking it off needs
 * @param toolingMin exchanging the tooling set in a mold that stays
 * @param resin minutes and purge for another resin
 * @param colour minutes and purge for another colour
 * @param foodClearMin line clearance before a food-grade campaign
 * @param firstArticleMin first-article check after any change
 * @param colourWorkBeside true when resin and colour work goes on beside mold work (the longer
 *     counts), false when it comes after (the sum)
 */
public record ChangeTable(
    int moldMin,
    int dismountPct,
    int toolingMin,
    ResinStep resin,
    ColourStep colour,
    int foodClearMin,
    int firstArticleMin,
    boolean colourWorkBeside) {
  /**
   * Another resin in the barrel.
   *
   * @param sameMin minutes when the melt temperatures differ by no more than {@code toleranceC}, or
   *     one is not known
   * @param upMin minutes when the next melts hotter
   * @param downMin minutes when the next melts cooler
   * @param toleranceC degrees that do not count
   * @param purgeThousandths barrels purged, thousandths of a barrel
   */
  public record ResinStep(
      int sameMin, int upMin, int downMin, int toleranceC, int purgeThousandths) {}

  /**
   * Another colour in the same resin.
   *
   * @param darkerMin minutes to the same lightness or a darker colour
   * @param lighterMin minutes to any lighter colour
   * @param lighterPer100Min further minutes for a step of 100 in lightness, in proportion, rounded
   *     up
   * @param unknownMin minutes when a lightness is not known
   * @param purgeDarkerThousandths barrels purged to the same or a darker colour
   * @param purgeLighterThousandths barrels purged to a lighter or an unknown colour
   */
  public record ColourStep(
      int darkerMin,
      int lighterMin,
      int lighterPer100Min,
      int unknownMin,
      int purgeDarkerThousandths,
      int purgeLighterThousandths) {}
}
