package pressweek.data.week;

import pressweek.data.files.BomRow;
import pressweek.data.problem.Component;

/**
 * A tip, carton or label of an item.
 *
 * @param kind what it is
 * @param id its id
 * @param pieces pieces for every {@code per} parts
 * @param per parts that the pieces serve
 */
record ComponentNeed(Component kind, String id, int pieces, int per) {
  /** A row of the bill of materials. */
  static ComponentNeed of(BomRow row) {
    return new ComponentNeed(kind(row.kind()), row.component(), row.pieces(), row.per());
  }

  private static Component kind(BomRow.Kind kind) {
    return switch (kind) {
      case INSERT -> Component.INSERT;
      case TIP -> Component.TIP;
      case CARTON -> Component.CARTON;
      case LABEL -> Component.LABEL;
    };
  }
}
