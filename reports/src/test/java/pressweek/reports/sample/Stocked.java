package pressweek.reports.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Stock;

/** Lots and receipts for a {@link SmallPlan}. */
public final class Stocked {
  private final List<Lot> lots = new ArrayList<>();
  private final List<Receipt> receipts = new ArrayList<>();

  /** Adds a free lot in bin C1-2 that never expires. */
  public Stocked lot(String what, String id, int pieces) {
    return lot(what, id, pieces, LotStatus.USABLE, OptionalInt.empty());
  }

  /** Adds a free lot in bin C1-2. */
  public Stocked lot(String what, String id, int pieces, LotStatus status, OptionalInt expires) {
    lots.add(new Lot(what, id, "C1-2", pieces, 0, expires, status, ""));
    return this;
  }

  /** Adds a delivery that may be used from a local time on. */
  public Stocked receipt(String what, int pieces, String usable) {
    int at = SampleWeek.at(usable);
    receipts.add(new Receipt(what, pieces, at - 120, at));
    return this;
  }

  /** Gives it to a plan, whose plant has these inserts. */
  public void to(SmallPlan plan, Insert... inserts) {
    Materials old = plan.materials;
    plan.materials =
        new Materials(
            old.resins(), old.colours(), List.of(inserts), new Stock(true, lots, receipts));
  }

  /** A pull of pieces from a lot; from a receipt when a local time stands in its place. */
  public static Pull pull(String run, String needBy, String what, String lot, int pieces) {
    boolean receipt = lot.startsWith("2026-");
    return new Pull(
        run,
        "V1",
        SampleWeek.at(needBy),
        what,
        receipt ? "" : lot,
        receipt ? "" : "C1-2",
        receipt ? SampleWeek.at(lot) : 0,
        pieces);
  }
}
