package pressweek.app.offer;

import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Unplaced;
import pressweek.solver.offer.Basis;
import pressweek.solver.offer.Cures;
import pressweek.solver.offer.Offers;

/**
 * The answer to an inquiry.
 *
 * @param inquiry what was asked
 * @param basis the plan without it
 * @param needMin when it is needed, minutes since 1970 UTC
 * @param rows an answer for each quantity
 * @param notes what a scheduler should know of the present
 * @param stopped whether it was told to stop
 * @param seconds how long the answer took
 */
public record Answered(
    Inquiry inquiry,
    Basis basis,
    int needMin,
    List<Row> rows,
    List<String> notes,
    boolean stopped,
    int seconds) {
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
   * @param cures what would help where it cannot be there in time with nobody made late; empty
   *     where it can, where nothing has to be made, and where it was stopped
   * @param untried true where it was stopped before this quantity was looked at
   */
  public record Row(
      int quantity,
      int fromStock,
      Optional<Offers> offers,
      Optional<Unplaced> cannot,
      Optional<Cures> cures,
      boolean untried) {
    /** A quantity that was not looked at. */
    static Row untried(int quantity) {
      return new Row(quantity, 0, Optional.empty(), Optional.empty(), Optional.empty(), true);
    }

    /** A quantity of which so many pieces are in stock, with what can be offered for the rest. */
    static Row offered(int quantity, int fromStock, Offers offers) {
      return new Row(
          quantity, fromStock, Optional.of(offers), offers.noPlace(), Optional.empty(), false);
    }

    /** A quantity that needs no run, or can have none. */
    static Row without(int quantity, Optional<Unplaced> cannot) {
      return new Row(quantity, 0, Optional.empty(), cannot, Optional.empty(), false);
    }

    /** The same with what would help. */
    Row with(Cures found) {
      return new Row(quantity, fromStock, offers, cannot, Optional.of(found), untried);
    }

    /** True when all of it is in finished stock. */
    public boolean allFromStock() {
      return offers.isEmpty() && cannot.isEmpty() && !untried;
    }

    /** True when it was stopped while this quantity was worked on. */
    public boolean cutShort() {
      return offers.filter(Offers::cutShort).isPresent();
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
                      List.of(o.unharmed(), o.byNeed(), o.soonest()).stream()
                          .flatMap(Optional::stream))
              .allMatch(offer -> offer.findings().isEmpty())
          && cures.stream()
              .flatMap(c -> c.helping().stream())
              .allMatch(help -> help.offer().findings().isEmpty());
    }
  }

  /** True when it was stopped before its end. */
  public boolean cutShort() {
    return stopped
        && (answersCutShort()
            || rows.stream().flatMap(row -> row.cures().stream()).anyMatch(Cures::cutShort));
  }

  /** True when a quantity was not looked at, or not to the end. */
  boolean answersCutShort() {
    return rows.stream().anyMatch(row -> row.untried() || row.cutShort());
  }

  /** The same with the seconds that it took. */
  public Answered within(int tookSeconds) {
    return new Answered(inquiry, basis, needMin, rows, notes, stopped, tookSeconds);
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
