package pressweek.data.declared;

import java.util.List;
import java.util.stream.Stream;

/**
 * A material that needs a declaration.
 *
 * @param kind what it is
 * @param id its id; empty when not known
 * @param words what it is called: {@code resin PP Moplen-like 5}
 * @param names the names under which a declaration of it may stand, the closest first
 */
public record Subject(Kind kind, String id, String words, List<String> names) {
  /** What a material is. */
  public enum Kind {
    RESIN,
    COLOUR,
    INSERT,
    TIP
  }

  public Subject {
    names = names.stream().filter(n -> !n.isEmpty()).toList();
  }

  /** A resin, by its id or its grade. */
  public static Subject resin(String id, String grade) {
    return id.isEmpty()
        ? new Subject(Kind.RESIN, "", "its resin, which is not known", List.of())
        : new Subject(Kind.RESIN, id, ("resin " + id + " " + grade).strip(), List.of(id, grade));
  }

  /** A colour: its masterbatch or its colourants, in one resin or in all. */
  public static Subject colour(String resin, String id) {
    return id.isEmpty()
        ? new Subject(Kind.COLOUR, "", "its colour, which is not known", List.of())
        : new Subject(Kind.COLOUR, id, "colour " + id, List.of(resin + ":" + id, id));
  }

  /** An insert part. */
  public static Subject insert(String id) {
    String words = id.isEmpty() ? "its insert, which is not known by number" : "insert " + id;
    return new Subject(Kind.INSERT, id, words, List.of(id));
  }

  /** A tip. */
  public static Subject tip(String id) {
    return new Subject(Kind.TIP, id, "tip " + id, List.of(id));
  }

  /** Whom to ask: {@code the supplier of resin PP}. */
  public String supplier() {
    return switch (kind) {
      case RESIN -> id.isEmpty() ? "the resin supplier" : "the supplier of resin " + id;
      case INSERT -> id.isEmpty() ? "the insert supplier" : "the supplier of insert " + id;
      case COLOUR -> id.isEmpty() ? "the colour supplier" : "the supplier of colour " + id;
      case TIP -> "the supplier of tip " + id;
    };
  }

  /** All that goes into an item. */
  public static List<Subject> of(Subject resin, String colour, List<Subject> metal) {
    return Stream.concat(Stream.of(resin, colour(resin.id(), colour)), metal.stream())
        .distinct()
        .toList();
  }
}
