package pressweek.app.offer;

import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Unplaced;
import pressweek.solver.offer.Basis;
import pressweek.solver.offer.Offers;

/**
 * The answer to an inquiry.
 *
 * @param inquiry what was asked
 * @param basis the plan without it
 * @param needMin when it is needed, minutes since 1970 UTC
 * @param rows an answer for each quantity
 * @param notes what a scheduler should know of the present
 */
public record Answered(
    Inquiry inquiry, Basis basis, int needMin, List<Row> rows, List<String> notes) {
  public Answered {
    rows = List.copyOf(rows);
    notes = List.copyOf(notes);
  }

  /** The plan without it, from the present on. */
  public Plan standing() {
    return basis.standing();
  }

  /**
   * The answer for one quantity.
   *
   * @param quantity pieces asked for
   * @param fromStock pieces of them that are in finished stock
   * @param offers what can be offered; empty where nothing has to be made, or nothing can be
   * @param cannot why it cannot be made, and what would cure that
   */
  public record Row(
      int quantity, int fromStock, Optional<Offers> offers, Optional<Unplaced> cannot) {
    /** True when all of it is in finished stock. */
    public boolean allFromStock() {
      return offers.isEmpty() && cannot.isEmpty();
    }

    /** True when it can be there in time and nobody is made late for it. */
    boolean inTime(int needMin) {
      return allFromStock()
          || offers
              .flatMap(Offers::unharmed)
              .filter(offer -> offer.readyMin() <= needMin)
              .isPresent()
          || offers.flatMap(Offers::byNeed).filter(offer -> offer.harmsNobody()).isPresent();
    }

    boolean isSound() {
      return offers.stream()
          .flatMap(
              o ->
                  List.of(o.unharmed(), o.byNeed(), o.soonest()).stream().flatMap(Optional::stream))
          .allMatch(offer -> offer.findings().isEmpty());
    }
  }

  /** True when every quantity can be there in time with nobody made late. */
  public boolean allInTime() {
    return rows.stream().allMatch(row -> row.inTime(needMin));
  }

  /** True when no offer breaks a hard rule. */
  public boolean isSound() {
    return rows.stream().allMatch(Row::isSound);
  }
}
