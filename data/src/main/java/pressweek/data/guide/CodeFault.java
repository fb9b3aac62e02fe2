package pressweek.data.guide;

import java.util.List;

/**
 * What is wrong with a code, and where.
 *
 * @param start its first character in the code, from 0; the code's length when the code ends too
 *     early
 * @param length characters of it; 0 when something is missing
 * @param seen what stands there
 * @param expected what was expected there
 * @param nearest symbols that look most like what stands there; may be empty
 * @param sentence all of it in one sentence
 */
public record CodeFault(
    int start, int length, String seen, String expected, List<String> nearest, String sentence) {
  public CodeFault {
    nearest = List.copyOf(nearest);
  }
}
