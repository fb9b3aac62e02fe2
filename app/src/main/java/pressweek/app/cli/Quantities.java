package pressweek.app.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Numbers of pieces as an argument: {@code 200,500}. */
final class Quantities {
  private static final int MOST = 100_000_000;
  private static final int MOST_AT_ONCE = 20;

  private Quantities() {}

  /** The quantities in their order; what is none is a bad argument. */
  static List<Integer> of(CommandLine line, String text) {
    List<Integer> quantities = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      int quantity = quantity(line, part.strip());
      if (!quantities.contains(quantity)) {
        quantities.add(quantity);
      }
    }
    if (quantities.size() > MOST_AT_ONCE) {
      throw new ParameterException(
          line, quantities.size() + " quantities; expected at most " + MOST_AT_ONCE + " at once");
    }
    return quantities;
  }

  private static int quantity(CommandLine line, String text) {
    try {
      int quantity = Integer.parseInt(text);
      if (quantity >= 1 && quantity <= MOST) {
        return quantity;
      }
    } catch (NumberFormatException e) {
      throw new ParameterException(line, wanted(text), e);
    }
    throw new ParameterException(line, wanted(text));
  }

  private static String wanted(String text) {
    return "quantity \"%s\" is not a number of pieces; expected one from 1 to %d, or several as 200,500"
        .formatted(text, MOST);
  }
}
