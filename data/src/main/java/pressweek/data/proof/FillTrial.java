package pressweek.data.proof;

import java.util.Set;
import pressweek.data.guide.Field;
import pressweek.data.problem.Item;

/**
 * Looks for fields that may say "does not apply" where every item has something: what every molded
 * item has is its head, its resin and its colour.
 */
final class FillTrial {
  private static final Set<String> EVERY_ITEM_HAS = Set.of(Item.HEAD, Item.RESIN, Item.COLOUR);

  private final Bench bench;

  FillTrial(Bench bench) {
    this.bench = bench;
  }

  void run() {
    for (Field field : bench.guide().sheet().fields()) {
      String none = field.frame().fill().none();
      if (!none.isEmpty() && EVERY_ITEM_HAS.contains(field.attribute())) {
        bench.warning(
            field.frame().line(),
            "field \"%s\" may be written with \"%s\" for \"does not apply\": an item without %s"
                .formatted(field.name(), none, field.attribute()));
      }
    }
  }
}
