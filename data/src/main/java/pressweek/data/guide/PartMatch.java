package pressweek.data.guide;

import java.util.List;

/**
 * A part of a code as it was read.
 *
 * @param part the part
 * @param form how it is written
 * @param start its first character
 * @param end character after it
 * @param hits its fields, in the order of the code
 */
record PartMatch(Part part, Form form, int start, int end, List<Hit> hits) {
  PartMatch {
    hits = List.copyOf(hits);
  }
}
