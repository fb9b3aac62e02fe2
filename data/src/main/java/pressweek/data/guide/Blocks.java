package pressweek.data.guide;

import java.util.ArrayList;
import java.util.List;

/** The parts of a family in blocks: neighbours that may change places form one. */
final class Blocks {
  /** Parts of any order that may stand in a row: how often each was read is kept in 4 bits. */
  static final int MOST_IN_A_ROW = 16;

  private Blocks() {}

  static List<List<Part>> of(List<Part> parts) {
    List<List<Part>> blocks = new ArrayList<>();
    boolean open = false;
    for (Part part : parts) {
      if (!(open && part.anyOrder())) {
        blocks.add(new ArrayList<>());
      }
      blocks.get(blocks.size() - 1).add(part);
      open = part.anyOrder();
    }
    return blocks.stream().map(List::copyOf).toList();
  }
}
