package pressweek.data.words;

import java.util.List;

/**
 * A piece of the words and what it can say.
 *
 * @param from its first token
 * @param to the token after it
 * @param senses what it can say, the likeliest first
 * @param readAs what it was read as, where it was not taken letter by letter; else empty
 * @param tie true when slips leave open which of its senses is meant
 * @param turn what stands before it
 */
record Mention(int from, int to, List<Sense> senses, String readAs, boolean tie, Turn turn) {
  Mention {
    senses = List.copyOf(senses);
  }

  /** What stands before a piece and turns what it says. */
  enum Turn {
    /** Nothing of the kind. */
    PLAIN,
    /** No, not, without. */
    NOT,
    /** But, except, instead: it replaces what a code said. */
    BUT,
    /** Or: it is one of two. */
    OR
  }

  static Mention plain(int from, int to, Claim claim) {
    return new Mention(from, to, List.of(new Sense(claim, 0)), "", false, Turn.PLAIN);
  }

  Claim first() {
    return senses.get(0).claim();
  }

  boolean saysNothing() {
    return first() instanceof Claim.Nothing;
  }

  Mention with(List<Sense> others) {
    return new Mention(from, to, others, readAs, tie, turn);
  }

  Mention with(Turn other) {
    return new Mention(from, to, senses, readAs, tie, other);
  }
}
