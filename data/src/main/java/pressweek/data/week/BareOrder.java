package pressweek.data.week;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.At;
import pressweek.data.files.InputFile;
import pressweek.data.files.OrderRow;
import pressweek.data.files.When;

/** An order line that says nothing but its item, and perhaps its resin and colour. */
final class BareOrder {
  private BareOrder() {}

  static OrderRow of(String code) {
    return of(code, "", "");
  }

  static OrderRow of(String code, String resin, String colour) {
    return new OrderRow(
        new At(InputFile.ORDERS.fileName(), 0),
        "",
        "",
        "",
        "",
        "",
        "",
        code.strip(),
        "",
        1,
        Optional.empty(),
        new When.Exact(Instant.EPOCH),
        100,
        Optional.empty(),
        List.of(),
        0,
        0,
        "",
        "",
        List.of(),
        resin,
        colour);
  }
}
