package pressweek.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import picocli.CommandLine;

/** Numbers of pieces as an argument: {@code 200,500}. */
final class Quantities {
  private static final int MOST = 100_000_000;
  private static final int MOST_AT_ONCE = 20;

  private Quantities() {}

  /** The quantities in their order; what is none is a bad argument, all of them said in one go. */
  static List<Integer> of(CommandLine line, String text) {
    BadArguments bad = new BadArguments();
    List<Integer> quantities = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      OptionalInt quantity = quantity(part.strip());
      if (quantity.isEmpty()) {
        bad.add(wanted(part.strip()));
      } else if (!quantities.contains(quantity.getAsInt())) {
        quantities.add(quantity.getAsInt());
      }
    }
    if (quantities.size() > MOST_AT_ONCE) {
      bad.add(quantities.size() + " quantities; expected at most " + MOST_AT_ONCE + " at once");
    }
    bad.check(line);
    return quantities;
  }

  private static OptionalInt quantity(String text) {
    try {
      int quantity = Integer.parseInt(text);
      return quantity >= 1 && quantity <= MOST ? OptionalInt.of(quantity) : OptionalInt.empty();
    } catch (NumberFormatException e) {
      return OptionalInt.empty();
    }
  }

  private static String wanted(String text) {
    return "quantity \"%s\" is not a number of pieces; expected one from 1 to %d, or several as 200,500"
        .formatted(text, MOST);
  }
}
