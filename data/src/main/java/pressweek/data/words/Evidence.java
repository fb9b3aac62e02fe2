package pressweek.data.words;

import java.util.List;
import java.util.Set;

/**
 * One choice of what each piece of a text says.
 *
 * @param tokens the text
 * @param mentions its pieces
 * @param claims what each of them says
 * @param second the mentions that speak of a second insert
 * @param cost doubt of the choice
 */
record Evidence(
    Tokens tokens, List<Mention> mentions, List<Claim> claims, Set<Integer> second, int cost) {
  Evidence with(Set<Integer> others) {
    return new Evidence(tokens, mentions, claims, others, cost);
  }

  /** An attribute as a mention means it: of the first insert or of the second. */
  String attribute(int mention, String name, Offer offer) {
    return second.contains(mention) && offer.isFirst(name) ? Offer.SECOND + name : name;
  }

  String original(int mention) {
    return tokens.original(mentions.get(mention).from(), mentions.get(mention).to());
  }
}
