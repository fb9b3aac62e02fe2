package pressweek.app.offer;

import java.util.List;
import pressweek.data.files.When;

/**
 * What a customer asks for.
 *
 * @param item item code
 * @param quantities pieces, each answered by itself
 * @param need when it should be there; a date alone is that day's shipping cut-off
 * @param needs what it demands of its material, for example {@code food}
 */
public record Inquiry(String item, List<Integer> quantities, When need, List<String> needs) {
  public Inquiry {
    quantities = List.copyOf(quantities);
    needs = List.copyOf(needs);
  }
}
