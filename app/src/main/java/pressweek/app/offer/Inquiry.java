package pressweek.app.offer;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import pressweek.data.declared.Needs;
import pressweek.data.files.Folder;
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

  /**
   * What can be demanded of a material: what Pressweek knows, what the plant keeps presses for, and
   * what its records declare.
   */
  public static Set<String> needs(Folder folder) {
    Set<String> known = new LinkedHashSet<>(List.of(Needs.FOOD, Needs.ROHS));
    known.addAll(folder.plant().food().needs());
    folder.materials().records().forEach(r -> known.add(r.need().toLowerCase(Locale.ROOT)));
    known.remove("");
    return known;
  }
}
