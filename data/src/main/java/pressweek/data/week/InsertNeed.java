package pressweek.data.week;

import java.util.OptionalDouble;

/**
 * An insert that goes into each part.
 *
 * @param insert insert part; empty when the plant has no list of them and only its kind is known
 * @param pieces pieces in each part
 * @param loadS seconds to load a piece by hand; empty for the plant's figure
 * @param standMm how far it stands out of the head, mm: the length of a stud, shaft or arm, else 0
 * @param fit what the mold must take
 */
record InsertNeed(String insert, int pieces, OptionalDouble loadS, double standMm, Fit fit) {
  /** Kind and thread; an empty text is not compared. */
  record Fit(String kind, String thread) {}

  /** True for a core that is molded over, which is loaded as an insert is and is none. */
  boolean core() {
    return insert.isEmpty() && fit.kind().isEmpty() && fit.thread().isEmpty();
  }
}
