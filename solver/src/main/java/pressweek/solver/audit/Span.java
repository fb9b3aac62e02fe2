package pressweek.solver.audit;

/**
 * A piece of time.
 *
 * @param fromMin first minute, since 1970 UTC
 * @param toMin first minute after it; a span that does not end after its start is empty
 */
record Span(long fromMin, long toMin) {
  boolean isEmpty() {
    return toMin <= fromMin;
  }

  /** The minutes that both have; may be empty. */
  Span and(Span other) {
    return new Span(Math.max(fromMin, other.fromMin), Math.min(toMin, other.toMin));
  }

  boolean overlaps(Span other) {
    return !and(other).isEmpty();
  }
}
