package pressweek.data.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.guide.Draft;
import pressweek.data.guide.Encoder;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.guide.GuideWords.Phrase;
import pressweek.data.guide.Objection;
import pressweek.data.words.Everyday.Pending;

/** Finds the code of a case: resolves what does not go together, then assumes what is not said. */
final class Settling {
  /** After so many contradictions the rest is not looked at. */
  private static final int MOST_CONFLICTS = 4;

  private final Encoder encoder;
  private final Pairs pairs;
  private final List<Phrase> assume;
  private final Case item;
  private final List<Pending> pending;

  Settling(Offer offer, Pairs pairs, Case item, List<Pending> pending) {
    this.encoder = offer.guide().encoder();
    this.pairs = pairs;
    this.assume = offer.guide().words().assume();
    this.item = item;
    this.pending = pending;
  }

  /** The best draft with all that is said and assumed; empty when something contradicts. */
  Optional<Draft> agreed() {
    if (!pairs.apart(item.known()).isEmpty()) {
      return Optional.empty();
    }
    Map<String, String> all = new LinkedHashMap<>(item.known());
    List<Assumed> taken = new ArrayList<>();
    int usual = 0;
    for (Pending one : pending) {
      usual += take(one.values(), one.because(), all, taken) ? 1 : 0;
    }
    assume.forEach(phrase -> assume(phrase, all, taken));
    Optional<Draft> draft = usual == pending.size() ? draft(all) : Optional.empty();
    draft.ifPresent(found -> accept(all, taken));
    return draft;
  }

  /** The same, after what contradicts has been left open; empty when no code says any of it. */
  Optional<Draft> run() {
    for (int i = 0; i < MOST_CONFLICTS; i++) {
      Optional<Draft> draft = agreed();
      if (draft.isPresent()) {
        return draft;
      }
      if (isPossible(item.known())) {
        return stepwise();
      }
      contradiction(item.known(), List.of());
    }
    return isPossible(item.known()) ? stepwise() : Optional.empty();
  }

  private Optional<Draft> draft(Map<String, String> known) {
    List<Draft> drafts = encoder.drafts(known, 1);
    return drafts.isEmpty() ? Optional.empty() : Optional.of(drafts.get(0));
  }

  private boolean isPossible(Map<String, String> known) {
    return pairs.apart(known).isEmpty() && draft(known).isPresent();
  }

  private void accept(Map<String, String> all, List<Assumed> taken) {
    item.fill(all);
    taken.forEach(one -> item.assume(one.means(), one.because()));
  }

  /** Takes values if they do not contradict; what was known of them is not assumed. */
  private boolean take(
      Map<String, String> values, String because, Map<String, String> all, List<Assumed> taken) {
    Map<String, String> fresh = new LinkedHashMap<>(values);
    fresh.entrySet().removeIf(value -> value.getValue().equals(all.get(value.getKey())));
    if (fresh.isEmpty()) {
      return true;
    }
    boolean admitted =
        item.admits(fresh)
            && fresh.keySet().stream().noneMatch(all::containsKey)
            && pairs.admit(all, fresh);
    if (admitted) {
      all.putAll(fresh);
      taken.add(new Assumed(fresh, because));
    }
    return admitted;
  }

  /** What was spoken of and refused is asked for, never assumed. */
  private void assume(Phrase phrase, Map<String, String> all, List<Assumed> taken) {
    if (phrase.set().keySet().stream().anyMatch(item::isRefused)) {
      return;
    }
    boolean agrees =
        phrase.set().entrySet().stream()
            .allMatch(v -> all.getOrDefault(v.getKey(), v.getValue()).equals(v.getValue()));
    if (agrees && Clauses.hold(phrase.when(), all)) {
      take(phrase.set(), phrase.because(), all, taken);
    }
  }

  /** One by one, each only when a code still says it all. */
  private Optional<Draft> stepwise() {
    pending.forEach(this::usual);
    for (Phrase phrase : assume) {
      Map<String, String> all = new LinkedHashMap<>(item.known());
      List<Assumed> taken = new ArrayList<>();
      assume(phrase, all, taken);
      if (!taken.isEmpty() && isPossible(all)) {
        accept(all, taken);
      }
    }
    return draft(item.known());
  }

  private void usual(Pending usual) {
    Map<String, String> all = new LinkedHashMap<>(item.known());
    List<Assumed> taken = new ArrayList<>();
    if (take(usual.values(), usual.because(), all, taken) && isPossible(all)) {
      accept(all, taken);
    } else if (item.admits(usual.values()) && !other(usual) && !usual.weak()) {
      usual.values().forEach(all::putIfAbsent);
      contradiction(all, List.copyOf(usual.values().keySet()));
    }
  }

  /** Another of the values that the name allows, when only one is possible. */
  private boolean other(Pending usual) {
    for (Clause clause : usual.when()) {
      String attribute = clause.attribute();
      List<String> possible = new ArrayList<>();
      for (String value : clause.values()) {
        Map<String, String> all = new LinkedHashMap<>(item.known());
        all.put(attribute, value);
        if (!item.known().containsKey(attribute) && !value.equals("*") && isPossible(all)) {
          possible.add(value);
        }
      }
      if (possible.size() == 1) {
        Map<String, String> only = Map.of(attribute, possible.get(0));
        item.fill(only);
        item.assume(only, "the only " + Labels.of(attribute) + " that goes with the rest");
        return true;
      }
      if (!possible.isEmpty()) {
        item.leaveOpen(attribute, possible);
        return true;
      }
    }
    return false;
  }

  /** Says what does not go together and leaves the last of it open. */
  private void contradiction(Map<String, String> all, List<String> notTaken) {
    Map<String, String> pair = pairs.apart(all);
    List<Objection> objections = pair.isEmpty() ? encoder.objections(all) : pairs.reasons(pair);
    if (objections.isEmpty()) {
      return;
    }
    Objection first = objections.get(0);
    List<String> concerned = first.attributes().stream().filter(all::containsKey).toList();
    List<String> labels = concerned.stream().map(Labels::of).toList();
    item.conflict(String.join(" and ", labels) + ": " + Labels.in(first.sentence(), all.keySet()));
    List<String> last = concerned.stream().filter(notTaken::contains).toList();
    if (last.isEmpty()) {
      concerned.stream()
          .filter(item.known()::containsKey)
          .max(Comparator.comparingInt(item::saidBy))
          .ifPresent(attribute -> item.leaveOpen(attribute, List.of()));
    }
    notTaken.forEach(attribute -> item.open().putIfAbsent(attribute, List.of()));
  }
}
