package pressweek.data.week;

import pressweek.data.files.OrderRow;
import pressweek.data.week.Attempt.Done;

/** Finds the item code of an order line that says its item in another way. */
final class ItemNames {
  private final CustomerParts customerParts;

  ItemNames(CustomerParts customerParts) {
    this.customerParts = customerParts;
  }

  /** The line with an item code: its own, or that of the customer's part number. */
  Attempt<OrderRow> named(OrderRow order) {
    if (!order.item().isEmpty()) {
      return new Done<>(order);
    }
    return customerParts.find(order).then(row -> new Done<>(order.withItem(row.item())));
  }
}
