package pressweek.data.guide;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A code with what each of its parts says, or where and why it cannot be read.
 *
 * @param decoded what it means
 * @param pieces its parts, from left to right; none when it cannot be read
 * @param fault the first thing wrong with it; empty when it is good
 */
public record CodeReading(Decoded decoded, List<Piece> pieces, Optional<CodeFault> fault) {
  public CodeReading {
    pieces = List.copyOf(pieces);
  }

  /**
   * A part of a code, or a field of it.
   *
   * @param start its first character in {@code decoded.code()}, from 0
   * @param end the character after it
   * @param part name of the part
   * @param text as it stands in the code
   * @param says values by attribute; an empty value is: does not apply
   * @param words what it means, in words; may be empty
   */
  public record Piece(
      int start, int end, String part, String text, Map<String, String> says, String words) {}
}
