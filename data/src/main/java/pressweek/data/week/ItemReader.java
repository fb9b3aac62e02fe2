package pressweek.data.week;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import pressweek.data.files.BomRow;
import pressweek.data.files.InsertRow;
import pressweek.data.files.OrderRow;
import pressweek.data.files.OrderRow.InsertPieces;
import pressweek.data.guide.Decoded;
import pressweek.data.problem.Item;
import pressweek.data.problem.Origin;
import pressweek.data.thread.Threads;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/**
 * Reads what an item is: its code by the guide, overruled by the order line, refined by {@code
 * bom.csv} and the insert's own record.
 */
final class ItemReader {
  private static final Set<String> STANDING = Set.of("stud", "shaft", "arm");

  private final Codes codes;
  private final ItemNames names;
  private final InsertFinder inserts;
  private final Map<String, List<BomRow>> bom = new HashMap<>();
  private final Map<String, List<BomRow>> says = new HashMap<>();
  private final Map<String, List<ComponentNeed>> components = new HashMap<>();
  private final Set<String> recorded = new HashSet<>();
  private final Map<String, Decoded> decoded = new HashMap<>();

  ItemReader(Codes codes, ItemNames names, InsertFinder inserts, List<BomRow> bomRows) {
    this.codes = codes;
    this.names = names;
    this.inserts = inserts;
    for (BomRow row : bomRows) {
      recorded.add(key(row.item()));
      if (!row.attribute().isEmpty()) {
        says.computeIfAbsent(key(row.item()), k -> new ArrayList<>()).add(row);
      } else if (row.kind() == BomRow.Kind.INSERT) {
        bom.computeIfAbsent(key(row.item()), k -> new ArrayList<>()).add(row);
      } else {
        components
            .computeIfAbsent(key(row.item()), k -> new ArrayList<>())
            .add(ComponentNeed.of(row));
      }
    }
  }

  /** What an item code is looked up by: the guide may say that capitals do not matter. */
  String key(String code) {
    return codes.key(code);
  }

  /** The value of an attribute by the code alone; empty when it says none, or cannot be read. */
  String says(String code, String attribute) {
    Decoded answer = decoded(code);
    return answer.good() ? answer.item().value(attribute).orElse("") : "";
  }

  /** Why a code cannot be read; empty when it can. */
  List<String> faults(String code) {
    Decoded answer = decoded(code);
    return answer.good() ? List.of() : answer.faults();
  }

  private Decoded decoded(String code) {
    return decoded.computeIfAbsent(key(code), k -> codes.decode(code));
  }

  /** What an order line's item is. */
  Attempt<ReadItem> read(OrderRow order) {
    return read(order, sheet -> withInserts(sheet, order));
  }

  /**
   * What an order line's item is when it is molded over a core: its inserts are in the core, but
   * for those that {@code bom.csv} gives the item itself.
   */
  Attempt<ReadItem> readOver(OrderRow order) {
    boolean own = bom.containsKey(key(order.item()));
    return read(
        order,
        sheet ->
            own ? withInserts(sheet, order) : new Done<>(new ReadItem(sheet.item(), List.of())));
  }

  private Attempt<ReadItem> read(
      OrderRow order, Function<ItemSheet, Attempt<ReadItem>> withInserts) {
    return decode(order)
        .then(
            sheet -> {
              String because = order.at() + " overrules";
              sheet.set(Item.MOLD, order.mold(), Origin.ORDER, because);
              sheet.set(Item.RESIN, order.resin(), Origin.ORDER, because);
              sheet.set(Item.COLOUR, order.colour(), Origin.ORDER, because);
              return withInserts.apply(sheet);
            })
        .then(item -> new Done<>(item.with(components.getOrDefault(key(order.item()), List.of()))));
  }

  private Attempt<ItemSheet> decode(OrderRow order) {
    Decoded answer = decoded(order.item());
    if (answer.good() && answer.special() && !recorded.contains(key(order.item()))) {
      return new Stopped<>(
          "the code says special, and bom.csv has no record of item \"" + order.item() + "\"",
          "add what it is made of to bom.csv, by its drawing; nothing is assumed of a special");
    }
    if (answer.good()) {
      ItemSheet sheet = new ItemSheet(order.item(), names.fromWords(order, answer.attributes()));
      for (BomRow row : says.getOrDefault(key(order.item()), List.of())) {
        sheet.set(row.attribute(), row.value(), Origin.RECORD, row.at() + " says");
      }
      return new Done<>(sheet);
    }
    if (saysAll(order)) {
      return new Done<>(new ItemSheet(order.item(), List.of()));
    }
    return new Stopped<>(
        String.join("; ", answer.faults()),
        "correct the item code, or give mold, insert, resin and colour in the order line",
        "item");
  }

  /** True when the order line itself says all that a code would. */
  private boolean saysAll(OrderRow order) {
    boolean insertsSaid = !order.inserts().isEmpty() || bom.containsKey(key(order.item()));
    return insertsSaid
        && !order.mold().isEmpty()
        && !order.resin().isEmpty()
        && !order.colour().isEmpty();
  }

  private Attempt<ReadItem> withInserts(ItemSheet sheet, OrderRow order) {
    if (!order.inserts().isEmpty()) {
      return named(sheet, order.inserts(), Origin.ORDER, order.at() + " overrules");
    }
    List<BomRow> rows = bom.getOrDefault(key(order.item()), List.of());
    if (!rows.isEmpty()) {
      List<InsertPieces> pieces =
          rows.stream().map(row -> new InsertPieces(row.component(), row.pieces())).toList();
      return named(sheet, pieces, Origin.RECORD, rows.get(0).at().toString());
    }
    String byGuide = sheet.value(Item.INSERT);
    if (!byGuide.isEmpty()) {
      int pieces = pieces(sheet, "");
      return inserts.unknown()
          ? new Done<>(new ReadItem(sheet.item(), List.of(unlisted(byGuide, pieces))))
          : inserts.byId(byGuide).then(row -> described(sheet, List.of(need(row, pieces)), row));
    }
    return matched(sheet);
  }

  /** Inserts that the order line or the bill of materials names. */
  private Attempt<ReadItem> named(
      ItemSheet sheet, List<InsertPieces> pieces, Origin origin, String because) {
    List<InsertNeed> needs = new ArrayList<>();
    List<InsertRow> rows = new ArrayList<>();
    for (InsertPieces piece : pieces) {
      if (inserts.unknown()) {
        needs.add(unlisted(piece.insert(), piece.pieces()));
        continue;
      }
      Attempt<InsertRow> found = inserts.byId(piece.insert());
      if (found instanceof Stopped<InsertRow> stopped) {
        String column = origin == Origin.ORDER ? "insert" : "";
        return new Stopped<>(stopped.reason(), stopped.cure(), column);
      }
      InsertRow row = ((Done<InsertRow>) found).value();
      needs.add(need(row, piece.pieces()));
      rows.add(row);
    }
    sheet.set(Item.INSERT, list(needs), origin, because);
    return rows.isEmpty()
        ? new Done<>(new ReadItem(sheet.item(), needs))
        : described(sheet, needs, rows.get(0));
  }

  /** Inserts found by what the item says of them. */
  private Attempt<ReadItem> matched(ItemSheet sheet) {
    InsertSpec first = InsertSpec.first(sheet);
    if (first.kind().isEmpty()) {
      return new Done<>(new ReadItem(sheet.item(), List.of()));
    }
    InsertSpec second = InsertSpec.second(sheet);
    int pieces = pieces(sheet, "");
    if (inserts.unknown()) {
      List<InsertNeed> needs = new ArrayList<>(List.of(unlisted(first, pieces)));
      if (!second.kind().isEmpty()) {
        needs.add(unlisted(second, pieces(sheet, ItemSheet.SECOND)));
      }
      return new Done<>(new ReadItem(sheet.item(), needs));
    }
    return inserts
        .find(first)
        .then(
            row -> {
              List<InsertNeed> needs = new ArrayList<>(List.of(need(row, pieces)));
              if (second.kind().isEmpty()) {
                return matchedSheet(sheet, needs, row);
              }
              return inserts
                  .find(second)
                  .then(
                      other -> {
                        needs.add(need(other, pieces(sheet, ItemSheet.SECOND)));
                        return matchedSheet(sheet, needs, row);
                      });
            });
  }

  private static Attempt<ReadItem> matchedSheet(
      ItemSheet sheet, List<InsertNeed> needs, InsertRow row) {
    sheet.set(Item.INSERT, list(needs), Origin.RECORD, row.at() + " is what the item asks for");
    return described(sheet, needs, row);
  }

  /** Refines what the item says of its first insert by that insert's own record. */
  private static Attempt<ReadItem> described(
      ItemSheet sheet, List<InsertNeed> needs, InsertRow row) {
    String because = row.at() + " insert " + row.insert();
    sheet.set(Item.INSERT_KIND, row.kind(), Origin.RECORD, because);
    if (!Threads.same(row.thread(), sheet.value(Item.THREAD))) {
      sheet.set(Item.THREAD, row.thread(), Origin.RECORD, because);
    }
    sheet.set(Item.INSERT_MATERIAL, row.material(), Origin.RECORD, because);
    sheet.set(Item.FINISH, row.finish(), Origin.RECORD, because);
    sheet.set(ItemSheet.PASSIVATION, row.passivation(), Origin.RECORD, because);
    if (row.lengthMm().isPresent()) {
      String length = Words.exact(row.lengthMm().getAsDouble());
      sheet.set(Item.LENGTH_MM, length, Origin.RECORD, because);
    }
    return new Done<>(new ReadItem(sheet.item(), needs));
  }

  private static int pieces(ItemSheet sheet, String prefix) {
    String pieces = sheet.value(prefix + ItemSheet.INSERT_PIECES);
    return pieces.matches("[1-9]\\d{0,3}") ? Integer.parseInt(pieces) : 1;
  }

  private static InsertNeed need(InsertRow row, int pieces) {
    boolean stands = STANDING.contains(row.kind().toLowerCase(Locale.ROOT));
    double standMm = stands ? row.lengthMm().orElse(0) : 0;
    return new InsertNeed(
        row.insert(), pieces, row.loadS(), standMm, new InsertNeed.Fit(row.kind(), row.thread()));
  }

  private static InsertNeed unlisted(String id, int pieces) {
    return new InsertNeed(id, pieces, OptionalDouble.empty(), 0, new InsertNeed.Fit("", ""));
  }

  private static InsertNeed unlisted(InsertSpec spec, int pieces) {
    boolean stands = STANDING.contains(spec.kind().toLowerCase(Locale.ROOT));
    double standMm = stands ? Words.number(spec.lengthMm()).orElse(0) : 0;
    return new InsertNeed(
        "",
        pieces,
        OptionalDouble.empty(),
        standMm,
        new InsertNeed.Fit(spec.kind(), spec.thread()));
  }

  private static String list(List<InsertNeed> needs) {
    return String.join(
        "|",
        needs.stream()
            .map(need -> need.insert() + (need.pieces() == 1 ? "" : "*" + need.pieces()))
            .toList());
  }
}
