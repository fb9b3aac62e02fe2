package pressweek.data.week;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pressweek.data.files.CustomerPartRow;
import pressweek.data.files.OrderRow;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/** Items by customers' own part numbers. Capitals and spaces do not matter in the numbers. */
final class CustomerParts {
  private final Map<String, List<CustomerPartRow>> byPart = new HashMap<>();
  private final Codes codes;

  CustomerParts(List<CustomerPartRow> rows, Codes codes) {
    this.codes = codes;
    for (CustomerPartRow row : rows) {
      byPart.computeIfAbsent(key(row.customerPart()), k -> new ArrayList<>()).add(row);
    }
  }

  private static String key(String text) {
    return CustomerPartRow.key(text);
  }

  /**
   * The item that an order line's customer part is; a row for the customer counts before others.
   */
  Attempt<CustomerPartRow> find(OrderRow order) {
    List<CustomerPartRow> rows = byPart.getOrDefault(key(order.customerPart()), List.of());
    if (rows.isEmpty()) {
      return new Stopped<>(
          "customer part \"%s\" is not in customer_parts.csv".formatted(order.customerPart()),
          "add it to customer_parts.csv, or give the item code in orders.csv",
          "customer_part");
    }
    List<CustomerPartRow> own =
        rows.stream().filter(row -> key(row.customer()).equals(key(order.customer()))).toList();
    List<CustomerPartRow> theirs =
        own.isEmpty() ? rows.stream().filter(row -> row.customer().isEmpty()).toList() : own;
    if (theirs.isEmpty()) {
      return new Stopped<>(
          "customer part \"%s\" is known for %s, not for customer \"%s\""
              .formatted(
                  order.customerPart(),
                  rows.stream().map(CustomerPartRow::customer).collect(Collectors.joining(", ")),
                  order.customer()),
          "add it to customer_parts.csv for this customer, or correct the order line",
          "customer_part");
    }
    return revised(order, theirs);
  }

  private Attempt<CustomerPartRow> revised(OrderRow order, List<CustomerPartRow> rows) {
    String revision = key(order.revision());
    Optional<CustomerPartRow> exact =
        rows.stream().filter(row -> key(row.revision()).equals(revision)).findFirst();
    Optional<CustomerPartRow> any =
        rows.stream().filter(row -> row.revision().isEmpty()).findFirst();
    Optional<CustomerPartRow> found = exact.isPresent() ? exact : any;
    if (found.isPresent()) {
      return new Done<>(found.get());
    }
    String known =
        rows.stream().map(CustomerPartRow::revision).sorted().collect(Collectors.joining(", "));
    long items = rows.stream().map(row -> codes.key(row.item())).distinct().count();
    if (order.revision().isEmpty() && items == 1) {
      return new Done<>(rows.get(0));
    }
    return new Stopped<>(
        order.revision().isEmpty()
            ? "customer part \"%s\" differs by revision; which one? known: %s"
                .formatted(order.customerPart(), known)
            : "revision \"%s\" of customer part \"%s\" is not in customer_parts.csv; known: %s"
                .formatted(order.revision(), order.customerPart(), known),
        "ask the customer, then correct the order line or customer_parts.csv",
        "customer_part");
  }
}
