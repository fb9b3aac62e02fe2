package pressweek.data.floor;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.EventRow;
import pressweek.data.files.OrderRow;
import pressweek.data.files.When;

/** A new order line as a row of orders, so that it is read as all others are. */
final class RushRow {
  private static final int ORDINARY = 100;

  private RushRow() {}

  static OrderRow of(EventRow row, String line) {
    return new OrderRow(
        row.source(),
        row.what(),
        line,
        "",
        "",
        "",
        row.note(),
        row.item(),
        "",
        row.quantity().orElse(1),
        Optional.empty(),
        row.due().orElse(new When.Day(LocalDate.EPOCH)),
        ORDINARY,
        Optional.empty(),
        row.needs(),
        0,
        0,
        "",
        "",
        List.of(),
        "",
        "");
  }
}
