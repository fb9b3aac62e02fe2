package pressweek.data.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.guide.Draft;

/** Writes a settled case down as a reading. */
final class ReadingWriter {
  private static final int PER_QUESTION = 10;

  /** The doubt of a conflict. */
  static final int PER_CONFLICT = 20;

  private static final int PER_STRANGE_WORD = 3;

  private final Offer offer;
  private final Lexicon lexicon;
  private final Pairs pairs;
  private final Evidence evidence;
  private final Case item;

  ReadingWriter(Offer offer, Lexicon lexicon, Pairs pairs, Evidence evidence, Case item) {
    this.offer = offer;
    this.lexicon = lexicon;
    this.pairs = pairs;
    this.evidence = evidence;
    this.item = item;
  }

  Reading write(Optional<Draft> draft) {
    Set<String> questions = new LinkedHashSet<>();
    draft.ifPresent(
        found -> {
          implied(found);
          questions.addAll(new Questions(offer, pairs, item).of(found));
        });
    ties(questions);
    List<String> strange = strange(questions);
    List<Assumed> assumed = List.copyOf(new LinkedHashSet<>(item.assumed()));
    int doubt =
        evidence.cost()
            + assumed.size()
            + strange.size() * PER_STRANGE_WORD
            + questions.size() * PER_QUESTION
            + item.conflicts().size() * PER_CONFLICT;
    return new Reading(
        draft.map(Draft::code).orElse(""),
        draft.map(Draft::family).orElse(""),
        understood(),
        assumed,
        strange,
        List.copyOf(questions),
        item.conflicts(),
        doubt);
  }

  /** What the code says beyond what is known, since nothing else goes with it. */
  private void implied(Draft draft) {
    Map<String, String> implied = new LinkedHashMap<>();
    for (Map.Entry<String, String> value : draft.attributes().entrySet()) {
      String attribute = value.getKey();
      if (draft.implied().contains(attribute) && !offer.isOwnSymbol(attribute, value.getValue())) {
        implied.put(attribute, value.getValue());
      }
    }
    implied.forEach(
        (attribute, value) -> {
          item.assume(
              Map.of(attribute, value),
              "the only " + Labels.of(attribute) + " that goes with the rest");
          if (item.isUnwanted(attribute, value)) {
            item.conflict(
                Labels.of(attribute)
                    + ": nothing but "
                    + offer.display(attribute, value)
                    + " goes with the rest, and that is not wanted");
          }
        });
  }

  private void ties(Set<String> questions) {
    for (int i = 0; i < evidence.mentions().size(); i++) {
      if (evidence.mentions().get(i).tie()) {
        questions.add("what is \"" + evidence.original(i) + "\"?");
      }
    }
  }

  /** Words that say nothing here; those with digits or in capitals are asked for. */
  private List<String> strange(Set<String> questions) {
    List<String> strange = new ArrayList<>();
    boolean mixedCase = evidence.tokens().text().chars().anyMatch(Character::isLowerCase);
    for (int i = 0; i < evidence.claims().size(); i++) {
      if (evidence.claims().get(i) instanceof Claim.Unknown && !isNamed(i)) {
        String word = evidence.original(i);
        strange.add(word);
        boolean digits = word.chars().anyMatch(c -> c >= '0' && c <= '9');
        boolean capitals =
            mixedCase
                && word.length() > 1
                && word.chars().noneMatch(Character::isLowerCase)
                && word.chars().anyMatch(Character::isUpperCase);
        if (digits || capitals) {
          questions.add("what is \"" + word + "\"?");
        }
      }
    }
    return strange;
  }

  /** True when the words stand in a name of something that is known. */
  private boolean isNamed(int index) {
    Mention mention = evidence.mentions().get(index);
    for (Map.Entry<String, String> value : item.known().entrySet()) {
      boolean all = true;
      for (int i = mention.from(); i < mention.to() && all; i++) {
        Token token = evidence.tokens().at(i);
        all =
            token.isSign()
                || lexicon.names(value.getKey(), value.getValue(), Stems.plural(token.text()));
      }
      if (all) {
        return true;
      }
    }
    return false;
  }

  private List<Understood> understood() {
    List<Understood> understood = new ArrayList<>();
    for (int i = 0; i < evidence.mentions().size(); i++) {
      Mention mention = evidence.mentions().get(i);
      Map<String, String> means = means(i);
      if (!means.isEmpty()) {
        String text = evidence.original(i);
        understood.add(
            new Understood(
                evidence.tokens().at(mention.from()).start(),
                evidence.tokens().at(mention.to() - 1).end(),
                mention.readAs().isEmpty() ? text : text + ", read as " + mention.readAs(),
                means));
      }
    }
    return understood;
  }

  /** What a mention means; a word that tells which length a number is means the same as that. */
  private Map<String, String> means(int index) {
    if (!(evidence.claims().get(index) instanceof Claim.MeasureWord word)) {
      return item.means(index);
    }
    for (int beside : new int[] {index - 1, index + 1}) {
      boolean length =
          beside >= 0
              && beside < evidence.claims().size()
              && evidence.claims().get(beside) instanceof Claim.Length said
              && word.attributes().contains(said.attribute());
      if (length) {
        return item.means(beside);
      }
    }
    return Map.of();
  }
}
