package pressweek.data.guide;

import java.util.List;

/**
 * A part of a code as it was read.
 *
 * @param end character after the part
 * @param text the part as written
 * @param said what it says, in the order of the code
 */
record PartMatch(int end, String text, List<Said> said) {
  PartMatch {
    said = List.copyOf(said);
  }

  /** An attribute that a part says, with words for people, which may be empty. */
  record Said(String attribute, String value, String words) {}
}
