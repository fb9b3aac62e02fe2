package pressweek.data.words;

import java.util.List;

/**
 * One way to read a customer's words as an item.
 *
 * @param code item code; {@code ?} stands where it is open; empty when there is none
 * @param family kind of item; empty likewise
 * @param understood what the words say, in their order
 * @param assumed what they do not say and was taken
 * @param notUnderstood words without a meaning here
 * @param questions what to ask the customer
 * @param conflicts what does not go together, or is not made
 * @param doubt how much of a guess it is; of two readings the one with less is the likelier
 */
public record Reading(
    String code,
    String family,
    List<Understood> understood,
    List<Assumed> assumed,
    List<String> notUnderstood,
    List<String> questions,
    List<String> conflicts,
    int doubt) {
  /** What stands in a code where it is open. */
  static final String OPEN = "?";

  public Reading {
    understood = List.copyOf(understood);
    assumed = List.copyOf(assumed);
    notUnderstood = List.copyOf(notUnderstood);
    questions = List.copyOf(questions);
    conflicts = List.copyOf(conflicts);
  }

  /** True when it is an item, with nothing to ask and nothing against it. */
  public boolean complete() {
    return questions.isEmpty() && conflicts.isEmpty() && !code.isEmpty() && !code.contains(OPEN);
  }
}
