package pressweek.data.lookalike;

import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.thread.ThreadSize;

/** What keeps two parts apart that look alike, in words, by what they are themselves. */
final class Differences {
  private static final String CERTIFICATE = "the lot's certificate, looks prove nothing";

  /** Lengths that differ by no more, mm, are the same. */
  static final double SAME_LENGTH_MM = 0.05;

  private Differences() {}

  /** Threads of nearly one diameter; kinds do not matter, since gauges are shared among them. */
  static Optional<LookAlike> threads(SeenInsert a, SeenInsert b) {
    if (a.thread().isEmpty() || b.thread().isEmpty()) {
      return Optional.empty();
    }
    ThreadSize own = a.thread().get();
    ThreadSize other = b.thread().get();
    if (!own.looksLike(other)) {
      return Optional.empty();
    }
    String gauge = "go/no-go thread gauge " + name(a) + " passes one, not the other";
    return Optional.of(
        pair(a, b, name(b) + " instead of " + name(a) + ", " + why(own, other), gauge));
  }

  private static String name(SeenInsert insert) {
    return insert.look().thread().strip();
  }

  private static String why(ThreadSize own, ThreadSize other) {
    double gap = own.gapShare(other);
    if (gap >= 0.0005) {
      return "diameters " + Math.round(gap * 1000) / 10.0 + " % apart";
    }
    if (!own.pitchMm().equals(other.pitchMm())) {
      boolean known = own.pitchMm().isPresent() && other.pitchMm().isPresent();
      return known ? "same diameter" : "same diameter, one pitch not said";
    }
    return own.leftHand() != other.leftHand() ? "same but for the hand" : "same but for the flanks";
  }

  /** A blind nut for a through nut of the same thread. */
  static Optional<LookAlike> bottom(SeenInsert a, SeenInsert b) {
    boolean alike =
        a.shade() == b.shade() && (isBlind(a) && isThrough(b) || isThrough(a) && isBlind(b));
    return alike
        ? Optional.of(
            pair(
                a,
                b,
                (isBlind(b) ? "blind instead of through" : "through instead of blind")
                    + ", same thread",
                "a pin passes the through nut, not the blind one"))
        : Optional.empty();
  }

  private static boolean isBlind(SeenInsert insert) {
    return insert.kind().startsWith("blind");
  }

  private static boolean isThrough(SeenInsert insert) {
    return insert.kind().startsWith("through");
  }

  /** Another length of the same part. */
  static LookAlike length(SeenInsert a, SeenInsert b) {
    String difference =
        millimetres(b.look().lengthMm())
            + " instead of "
            + millimetres(a.look().lengthMm())
            + ", the next length";
    return pair(a, b, difference, "a steel rule");
  }

  private static String millimetres(OptionalDouble mm) {
    String text = Double.toString(Math.round(mm.orElse(0) * 100) / 100.0);
    return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + " mm";
  }

  /** Another stainless steel, or the same finish with another passivation. */
  static Optional<LookAlike> substance(SeenInsert a, SeenInsert b) {
    boolean steels =
        a.stainless().isPresent()
            && b.stainless().isPresent()
            && !a.stainless().equals(b.stainless())
            && a.shade() == b.shade();
    if (steels) {
      return Optional.of(unseen(a, b, a.look().material(), b.look().material()));
    }
    boolean films =
        a.look().material().strip().equalsIgnoreCase(b.look().material().strip())
            && a.finish().equals(b.finish())
            && !a.passivation().isEmpty()
            && !b.passivation().isEmpty()
            && !a.passivation().equals(b.passivation());
    return films ? Optional.of(unseen(a, b, film(a), film(b))) : Optional.empty();
  }

  private static String film(SeenInsert insert) {
    return insert.passivation().equals("none") ? "no passivation" : insert.passivation();
  }

  private static LookAlike unseen(SeenInsert a, SeenInsert b, String own, String other) {
    String difference = other.strip() + " instead of " + own.strip() + ", alike to the eye";
    return pair(a, b, difference, CERTIFICATE);
  }

  /** What the plant says of a pair. */
  static LookAlike named(SeenInsert a, SeenInsert b, String reason) {
    String told = reason.isBlank() ? "the part number on the bin" : reason.strip();
    return pair(a, b, "taken for each other in this plant", told);
  }

  private static LookAlike pair(SeenInsert a, SeenInsert b, String difference, String toldBy) {
    return new LookAlike(a.id(), b.id(), difference, toldBy);
  }
}
