package pressweek.app.offer;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.At;
import pressweek.data.files.Folder;
import pressweek.data.files.OrderRow;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Job;
import pressweek.data.problem.Unplaced;
import pressweek.data.week.RushWeek;
import pressweek.solver.StopSign;
import pressweek.solver.offer.Basis;
import pressweek.solver.offer.Offering;
import pressweek.solver.offer.Offers;
import pressweek.solver.repair.Repair;
import pressweek.solver.repair.Repaired;

/** Answers inquiries by a plan: each quantity becomes a new order line of the week that is left. */
public final class Inquiring {
  private static final int ORDINARY = 100;
  private static final String ORDER = "inquiry";

  private final Folder folder;
  private final Plan plan;
  private final int nowMin;

  /**
   * Answers by a plan.
   *
   * @param folder the plant's folder, by which the new line is read
   * @param plan the plan that stands
   * @param nowMin the present of the plan, minutes since 1970 UTC, from its start to before its
   *     horizon
   */
  public Inquiring(Folder folder, Plan plan, int nowMin) {
    this.folder = folder;
    this.plan = plan;
    this.nowMin = nowMin;
  }

  /** When an inquiry needs its pieces, minutes since 1970 UTC. */
  public int needMin(Inquiry inquiry) {
    LocalTime cutOff = plan.problem().plant().shipping().cutOff();
    return inquiry.need().minute(plan.problem().plant().hours().zone(), cutOff);
  }

  /**
   * Answers an inquiry.
   *
   * @param inquiry what is asked
   * @param limits how long to search: seconds for all of it, or steps for each search
   * @param stop ends it with what has been found
   */
  public Answered answer(Inquiry inquiry, Settings limits, StopSign stop) {
    Repaired left = Repair.of(plan, List.of(), Optional.empty(), nowMin);
    int searches = 1 + 2 * inquiry.quantities().size();
    int seconds = limits.steps() > 0 ? 0 : Math.max(1, limits.seconds() / searches);
    Settings each = new Settings(seconds, limits.steps(), limits.seed());
    Basis basis = Basis.of(plan, left.problem(), each, stop);
    List<Answered.Row> rows = new ArrayList<>();
    for (int quantity : inquiry.quantities()) {
      rows.add(
          stop.isGiven()
              ? Answered.Row.untried(quantity)
              : row(basis, order(inquiry, quantity), needMin(inquiry), each, stop));
    }
    return new Answered(inquiry, basis, needMin(inquiry), rows, left.notes(), 0);
  }

  private Answered.Row row(Basis basis, OrderRow order, int needMin, Settings each, StopSign stop) {
    RushWeek rush =
        RushWeek.build(folder, List.of(order), nowMin)
            .orElseThrow(() -> new IllegalArgumentException("the folder is at fault"));
    Optional<Unplaced> cannot = rush.unplaced().stream().findFirst();
    if (cannot.isPresent() || rush.jobs().isEmpty()) {
      return new Answered.Row(order.quantity(), 0, Optional.empty(), cannot, false);
    }
    int fromStock = rush.jobs().stream().mapToInt(j -> j.quantity().fromStock()).max().orElse(0);
    Repaired with = Repair.of(plan, List.of(), Optional.of(rush), nowMin);
    Offers offers = Offering.of(basis, with.problem(), needMin, each, stop);
    return new Answered.Row(
        order.quantity(), fromStock, Optional.of(offers), offers.noPlace(), false);
  }

  private OrderRow order(Inquiry inquiry, int quantity) {
    return new OrderRow(
        new At("the inquiry", 0),
        orderNumber(),
        "1",
        "",
        "",
        "",
        "",
        inquiry.item(),
        "",
        quantity,
        Optional.empty(),
        inquiry.need(),
        ORDINARY,
        Optional.empty(),
        inquiry.needs(),
        0,
        0,
        "",
        "",
        List.of(),
        "",
        "");
  }

  /** An order number that neither the folder nor the plan has. */
  private String orderNumber() {
    Set<String> taken = new HashSet<>();
    folder.demand().orders().forEach(order -> taken.add(order.order()));
    plan.problem().jobs().stream().map(Job::line).forEach(line -> taken.add(line.order()));
    plan.unplaced().forEach(line -> taken.add(line.order()));
    String number = ORDER;
    for (int i = 2; taken.contains(number); i++) {
      number = ORDER + i;
    }
    return number;
  }
}
