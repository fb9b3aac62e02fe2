package pressweek.reports.changes;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalDouble;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;
import pressweek.reports.schedule.PlanBook;

/** What another resin or colour does to the barrel. */
final class BarrelStep {
  private final PlanBook book;

  BarrelStep(PlanBook book) {
    this.book = book;
  }

  /** True when the barrel holds a resin and gets another. */
  static boolean otherResin(ChangeRow row) {
    String from = row.setups().from().resin();
    String to = row.setups().to().resin();
    return !from.isEmpty() && !to.isEmpty() && !from.equals(to);
  }

  /** True when the barrel gets something that was not in it. */
  static boolean filled(ChangeRow row) {
    return !row.setups().to().resin().isEmpty() && !row.materialIn().isEmpty();
  }

  /** Which way it goes: {@code up 60 C to 290 C}; {@code not known}; empty when the resin stays. */
  String temperature(ChangeRow row) {
    if (!otherResin(row)) {
      return "";
    }
    OptionalDouble old = meltC(row.setups().from());
    OptionalDouble next = meltC(row.setups().to());
    if (old.isEmpty() || next.isEmpty()) {
      return "not known";
    }
    double hotter = next.getAsDouble() - old.getAsDouble();
    String to = degrees(next.getAsDouble());
    return hotter == 0
        ? "same, " + to
        : (hotter > 0 ? "up " : "down ") + degrees(Math.abs(hotter)) + " to " + to;
  }

  /** True when it cannot be said which way the barrel goes. */
  boolean unknown(ChangeRow row) {
    return temperature(row).equals("not known");
  }

  /** The resins of a change whose melt temperature is not recorded. */
  String unknownResins(ChangeRow row) {
    boolean old = meltC(row.setups().from()).isEmpty();
    boolean next = meltC(row.setups().to()).isEmpty();
    return (old ? row.setups().from().resin() : "")
        + (old && next ? ", " : "")
        + (next ? row.setups().to().resin() : "");
  }

  private OptionalDouble meltC(Setup setup) {
    return book.plan().problem().materials().resins().stream()
        .filter(r -> r.id().equals(setup.resin()))
        .map(Resin::meltC)
        .findFirst()
        .orElse(OptionalDouble.empty());
  }

  private static String degrees(double celsius) {
    return String.format(Locale.ROOT, "%.0f C", celsius);
  }

  /** What is done to the barrel when the press stands. */
  String task(ChangeRow row) {
    if (row.materialOut().isEmpty()) {
      return "fill the barrel with " + row.materialIn();
    }
    String purge = BigDecimal.valueOf(row.purgeG(), 3).toPlainString();
    String direction = temperature(row);
    return "purge %s with %s, %s kg%s"
        .formatted(
            row.materialOut(),
            row.materialIn(),
            purge,
            direction.isEmpty() ? "" : ", barrel " + direction);
  }
}
