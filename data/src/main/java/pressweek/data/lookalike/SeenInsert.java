package pressweek.data.lookalike;

import java.util.Locale;
import java.util.Optional;
import pressweek.data.published.Grades;
import pressweek.data.thread.ThreadSize;
import pressweek.data.thread.Threads;

/**
 * An insert part made ready for comparing.
 *
 * @param look the part
 * @param thread sizes of its thread; empty without one, or when it cannot be read
 * @param threadKey its thread in one spelling
 * @param kind its kind in small letters
 * @param shade its colour at sight
 * @param stainless steel group of ISO 3506-1; empty when the material names none
 * @param finish finish in small letters, without what it says of the passivation
 * @param passivation passivation in small letters, from the finish when not given on its own
 */
record SeenInsert(
    InsertLook look,
    Optional<ThreadSize> thread,
    String threadKey,
    String kind,
    Shade shade,
    Optional<String> stainless,
    String finish,
    String passivation) {
  /** Colour at sight, as far as it keeps parts apart; common practice, no source. */
  enum Shade {
    /** Zinc clear or blue, stainless, nickel, aluminium. */
    SILVER,
    /** Bare brass, yellow chromate. */
    YELLOW,
    /** Black oxide, black zinc. */
    DARK
  }

  static SeenInsert of(InsertLook look) {
    String finish = plain(look.finish());
    String passivation = plain(look.passivation());
    return new SeenInsert(
        look,
        ThreadSize.read(look.thread()),
        Threads.key(look.thread()),
        plain(look.kind()),
        shade(plain(look.material()), finish),
        Grades.stainlessGroup(look.material()),
        finish.replaceAll("\\b(trivalent|hexavalent)\\b", "").replaceAll("[\\s,]+", " ").strip(),
        passivation.isEmpty() ? said(finish) : passivation);
  }

  private static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  private static Shade shade(String material, String finish) {
    boolean bare = finish.isEmpty() || finish.equals("none") || finish.equals("plain");
    if (finish.contains("black")) {
      return Shade.DARK;
    }
    return finish.contains("yellow") || bare && material.contains("brass")
        ? Shade.YELLOW
        : Shade.SILVER;
  }

  private static String said(String finish) {
    return finish.contains("trivalent")
        ? "trivalent"
        : finish.contains("hexavalent") ? "hexavalent" : "";
  }

  String id() {
    return look.id();
  }

  /** True when both have the same thread, or none. */
  boolean hasThreadOf(SeenInsert other) {
    return thread.isPresent() && other.thread.isPresent()
        ? thread.equals(other.thread)
        : threadKey.equals(other.threadKey);
  }
}
