package pressweek.examples;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Draws heads with their molds. A mold may run on 20 to 40 % of the presses, neighbours in size,
 * and its weights and areas fit the smallest of them.
 */
final class MoldSheet {
  private final Draw draw;
  private final PlantSize size;
  private final List<DrawnPress> presses;
  private final List<DrawnInsert> inserts;
  private final Deque<DrawnPress> verticalDeck = new ArrayDeque<>();
  private final Deque<DrawnPress> horizontalDeck = new ArrayDeque<>();

  MoldSheet(Draw draw, PlantSize size, List<DrawnPress> presses, List<DrawnInsert> inserts) {
    this.draw = draw;
    this.size = size;
    this.presses = presses;
    this.inserts = inserts;
  }

  /** Heads, those with two molds (and most of the lines) first. */
  List<DrawnHead> heads() {
    List<DrawnHead> heads = new ArrayList<>();
    int count = size.molds() - size.twinHeads();
    int all = size.presses();
    int up = size.verticalPresses();
    for (int i = 0; i < count; i++) {
      boolean vertical = all == up || (i + 1) * up / all > i * up / all;
      heads.add(head(String.format(Locale.ROOT, "H%04d", i + 1), vertical, i < size.twinHeads()));
    }
    return List.copyOf(heads);
  }

  private DrawnHead head(String symbol, boolean vertical, boolean twin) {
    boolean plain = !vertical && draw.chance(40);
    String kind = vertical ? draw.of(InsertSheet.KINDS) : "blind";
    List<DrawnInsert> ofKind = inserts.stream().filter(i -> i.kind().equals(kind)).toList();
    return new DrawnHead(
        symbol,
        twin ? draw.between(5, 8) : draw.between(1, 4),
        ResinSheet.some(draw),
        draw.some(ResinSheet.COLOURS, draw.between(4, 6)),
        plain ? List.of() : draw.some(ofKind, draw.between(2, 3)),
        mold(window(vertical), vertical),
        twin ? List.of(symbol + "-A", symbol + "-B") : List.of(symbol + "-A"));
  }

  /**
   * Presses of one orientation that are neighbours in size, round one that is dealt in turn, so
   * that all presses get their share.
   */
  private List<DrawnPress> window(boolean vertical) {
    List<DrawnPress> kind = presses.stream().filter(p -> p.vertical() == vertical).toList();
    Deque<DrawnPress> deck = vertical ? verticalDeck : horizontalDeck;
    if (deck.isEmpty()) {
      deck.addAll(draw.some(kind, kind.size()));
    }
    int wanted = Math.max(1, size.presses() * draw.between(20, 40) / 100);
    int width = Math.min(wanted, kind.size());
    int middle = kind.indexOf(deck.remove());
    int from = Math.max(0, Math.min(middle - width / 2, kind.size() - width));
    return kind.subList(from, from + width);
  }

  private DrawnMold mold(List<DrawnPress> window, boolean vertical) {
    DrawnPress smallest = window.get(0);
    int cavities = vertical ? draw.between(1, 2) : 2 * draw.between(1, 2);
    int shotTenths = smallest.shotPsG() * draw.between(44, 56) / 10;
    int areaTenths = smallest.clampKn() * draw.between(10, 15) / 10;
    int runnerTenths = shotTenths / 10;
    return new DrawnMold(
        window,
        cavities,
        (shotTenths - runnerTenths) / cavities,
        runnerTenths,
        areaTenths / cavities,
        draw.between(26, 55),
        vertical,
        5 * draw.between(6, 12) + (smallest.clampKn() > 800 ? 15 : 0));
  }

  /** The molds, with the items of each. */
  static String csv(List<DrawnHead> heads, Map<String, List<String>> itemsByHead) {
    Sheet sheet =
        new Sheet(
            "mold",
            "makes",
            "insert_kinds",
            "tooling",
            "live_cavities",
            "runs_on",
            "orientation",
            "part_g",
            "runner_g",
            "part_area_cm2",
            "cycle_s",
            "hand_load",
            "change_min");
    for (DrawnHead head : heads) {
      DrawnMold mold = head.mold();
      String makes =
          String.join("|", itemsByHead.getOrDefault(head.symbol(), List.of(head.symbol())));
      for (String id : head.copies()) {
        sheet.row(
            id,
            makes,
            head.inserts().isEmpty() ? "" : head.inserts().get(0).kind(),
            tooling(head),
            mold.cavities(),
            runsOn(mold),
            head.vertical() ? "vertical" : "horizontal",
            Sheet.tenths(mold.partTenths()),
            Sheet.tenths(mold.runnerTenths()),
            Sheet.tenths(mold.areaTenths()),
            mold.cycleS(),
            mold.handLoad() ? "yes" : "no",
            mold.changeMin());
      }
    }
    return sheet.text();
  }

  private static String tooling(DrawnHead head) {
    return head.threads().size() < 2
        ? ""
        : head.threads().stream()
            .map(t -> t + "=" + head.tooling(t))
            .collect(Collectors.joining("|"));
  }

  private static String runsOn(DrawnMold mold) {
    List<DrawnPress> proven = mold.proven();
    return Stream.concat(
            proven.stream().map(p -> p.id() + ":proven"),
            mold.presses().stream().skip(proven.size()).map(p -> p.id() + ":allowed"))
        .collect(Collectors.joining("|"));
  }
}
