package pressweek.solver.timing;

/**
 * What sequences are worth to a search: they are kept, and others that differ a little are tried.
 */
public interface Valuation {
  /** The value of sequences that the next attempts differ from, thousandths of a cent. */
  long keep(Sequences sequences);

  /** The same for sequences that differ only a little from those kept before. */
  long keep(Sequences sequences, Touched touched);

  /**
   * The value of sequences that differ from those kept, or a value above the limit when it comes to
   * more than that.
   *
   * @param most the limit
   * @param touched where they differ; nowhere when they may differ everywhere
   * @param bold may give up what probably comes to more
   */
  long attempt(Sequences sequences, long most, Touched touched, boolean bold);
}
