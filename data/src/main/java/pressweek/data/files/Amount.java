package pressweek.data.files;

import java.math.RoundingMode;
import java.util.OptionalInt;

/**
 * How much of something a lot or a delivery holds.
 *
 * @param count pieces, or grams
 * @param weighed true for grams
 */
public record Amount(int count, boolean weighed) {
  private static final double MOST_KG = 1_000_000;
  private static final int GRAMS = 1000;

  private static final String KG = "weight_kg";

  /** Pieces by the column, or kilograms by {@code weight_kg}: one of the two. */
  static Amount read(Fields f, String column, int least) {
    if (f.text(KG).isEmpty()) {
      if (f.text(column).isEmpty()) {
        f.fault(
            column,
            "empty",
            f.label(column) + " is empty; expected pieces, or weight_kg of a resin or masterbatch");
      }
      return new Amount(f.whole(column, least, Fields.MOST_PIECES).orElse(least), false);
    }
    if (!f.text(column).isEmpty()) {
      f.fault(KG, "both", f.seen(KG) + " beside " + f.seen(column) + "; expected one of the two");
    }
    OptionalInt grams = f.scaled(KG, GRAMS, MOST_KG, RoundingMode.FLOOR);
    if (grams.isPresent() && grams.getAsInt() < least) {
      f.fault(KG, "range", f.seen(KG) + " is less than a gram; expected more");
    }
    return new Amount(grams.orElse(least), true);
  }
}
