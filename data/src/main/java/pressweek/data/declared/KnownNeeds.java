package pressweek.data.declared;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.Folder;
import pressweek.data.files.Nearest;

/**
 * What can be demanded of a plant's materials: what Pressweek knows, what the plant keeps presses
 * for, and what its records declare.
 *
 * @param words the words, in small letters
 */
public record KnownNeeds(Set<String> words) {
  public KnownNeeds {
    words = Collections.unmodifiableSet(new LinkedHashSet<>(words));
  }

  /** Those of a folder. */
  public static KnownNeeds of(Folder folder) {
    Set<String> known = new LinkedHashSet<>(List.of(Needs.FOOD, Needs.ROHS));
    known.addAll(folder.plant().food().needs());
    folder.materials().records().forEach(r -> known.add(r.need().toLowerCase(Locale.ROOT)));
    known.remove("");
    return new KnownNeeds(known);
  }

  /**
   * What is wrong with a demand; empty when it can be met at all.
   *
   * @param word the demand in any case
   * @return as {@code "foood" is not known; expected one of food, rohs; did you mean food?}
   */
  public Optional<String> fault(String word) {
    if (words.contains(word.strip().toLowerCase(Locale.ROOT))) {
      return Optional.empty();
    }
    return Optional.of(
        "\"%s\" is not known; expected one of %s; did you mean %s?"
            .formatted(word, String.join(", ", words), Nearest.to(word, words, 1).get(0)));
  }
}
