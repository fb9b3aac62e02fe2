package pressweek.data.declared;

import java.util.regex.Pattern;

/**
 * Which paper to ask a supplier for. Rules are named where the paper leans on them: 21 CFR 177.1520
 * for olefin polymers in contact with food, Directive 2011/65/EU (RoHS) for restricted substances.
 */
public final class SupplierPaper {
  /** Polypropylene and polyethylene by their symbols of ISO 1043-1, also with fillers. */
  private static final Pattern OLEFIN = Pattern.compile("(PP|PE)([-+ ].*)?|(LD|LLD|HD|MD)PE");

  private SupplierPaper() {}

  /** The paper in words: {@code a food-contact declaration of its colourants}. */
  public static String of(Subject subject, String need) {
    return switch (need) {
      case Needs.FOOD -> food(subject);
      case Needs.ROHS ->
          subject.kind() == Subject.Kind.INSERT
              ? "a RoHS declaration with the plating certificate"
              : "a RoHS declaration";
      default -> "a " + need + " declaration";
    };
  }

  private static String food(Subject subject) {
    return switch (subject.kind()) {
      case RESIN ->
          isOlefin(subject.id())
              ? "a food-contact declaration (21 CFR 177.1520, or what rules in your market)"
              : "a food-contact declaration";
      case COLOUR -> "a food-contact declaration of its colourants";
      case INSERT -> "a food-contact declaration with the mill certificate";
      case TIP -> "a food-contact declaration";
    };
  }

  /** True for polypropylene and polyethylene, which 21 CFR 177.1520 is about. */
  public static boolean isOlefin(String resin) {
    return OLEFIN.matcher(resin).matches();
  }
}
