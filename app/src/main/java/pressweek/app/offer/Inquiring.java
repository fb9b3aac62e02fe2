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
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.data.week.RushWeek;
import pressweek.solver.StopSign;
import pressweek.solver.offer.Basis;
import pressweek.solver.offer.Cures;
import pressweek.solver.offer.Curing;
import pressweek.solver.offer.Offering;
import pressweek.solver.repair.Repair;
import pressweek.solver.repair.Repaired;

/** Answers inquiries by a plan: each quantity becomes a new order line of the week that is left. */
public final class Inquiring {
  private static final int ORDINARY = 100;
  private static final long NANOS = 1_000_000_000L;
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
    Settings each = each(inquiry, limits);
    Basis standing = Basis.standing(plan, left.problem());
    List<Placed> placed = new ArrayList<>();
    for (int quantity : inquiry.quantities()) {
      placed.add(
          stop.isGiven()
              ? new Placed(Answered.Row.untried(quantity), Optional.empty())
              : placed(standing, needMin(inquiry), order(inquiry, quantity), stop));
    }
    Asked asked = new Asked(standing.searched(each, stop), needMin(inquiry), each, stop);
    List<Tried> tried = placed.stream().map(one -> one.tried(each)).toList();
    List<Answered.Row> rows = cured(asked, tried);
    return new Answered(
        inquiry, asked.basis(), asked.needMin(), rows, left.notes(), stop.isGiven(), 0);
  }

  /** Limits of one search: one without the line, for each quantity two and its cures. */
  private static Settings each(Inquiry inquiry, Settings limits) {
    int searches = 1 + 3 * inquiry.quantities().size();
    int seconds = limits.steps() > 0 ? 0 : Math.max(1, limits.seconds() / searches);
    return new Settings(seconds, limits.steps(), limits.seed());
  }

  /** What is the same for all quantities. */
  private record Asked(Basis basis, int needMin, Settings each, StopSign stop) {}

  /** A quantity with the week that it was tried in; empty where it was not. */
  private record Tried(Answered.Row row, Optional<Problem> week) {}

  /**
   * A quantity that was tried in the places of the plan as it stands: before anything is searched
   * for, so that there is an answer to all of them soon.
   */
  private record Placed(Answered.Row row, Optional<InPlaces> begun) {
    Tried tried(Settings each) {
      return begun
          .map(
              b ->
                  new Tried(
                      Answered.Row.offered(
                          row.quantity(), b.fromStock(), b.offering().offers(each)),
                      Optional.of(b.week())))
          .orElseGet(() -> new Tried(row, Optional.empty()));
    }
  }

  private record InPlaces(Problem week, int fromStock, Offering offering) {}

  private Placed placed(Basis standing, int needMin, OrderRow order, StopSign stop) {
    RushWeek rush =
        RushWeek.build(folder, List.of(order), nowMin)
            .orElseThrow(() -> new IllegalArgumentException("the folder is at fault"));
    Optional<Unplaced> cannot = rush.unplaced().stream().findFirst();
    if (cannot.isPresent() || rush.jobs().isEmpty()) {
      return new Placed(Answered.Row.without(order.quantity(), cannot), Optional.empty());
    }
    int fromStock = rush.jobs().stream().mapToInt(j -> j.quantity().fromStock()).max().orElse(0);
    Problem week = Repair.of(plan, List.of(), Optional.of(rush), nowMin).problem();
    Offering offering = Offering.placed(standing, week, needMin, stop);
    return new Placed(
        Answered.Row.untried(order.quantity()),
        Optional.of(new InPlaces(week, fromStock, offering)));
  }

  /**
   * With what would help, where a quantity cannot be there in time with nobody made late. These
   * share the time that would have been for the cures of all.
   */
  private static List<Answered.Row> cured(Asked asked, List<Tried> all) {
    int without = (int) all.stream().filter(one -> needsCure(asked, one)).count();
    List<Answered.Row> rows = new ArrayList<>();
    for (Tried one : all) {
      if (needsCure(asked, one)) {
        long share = asked.each().seconds() * NANOS * all.size() / without;
        rows.add(one.row().with(cures(asked, one, share)));
      } else {
        rows.add(one.row());
      }
    }
    return rows;
  }

  private static boolean needsCure(Asked asked, Tried one) {
    return one.week().isPresent() && !one.row().inTime(asked.needMin()) && !one.row().cutShort();
  }

  private static Cures cures(Asked asked, Tried one, long nanos) {
    long end = System.nanoTime() + nanos;
    StopSign soon =
        new StopSign(() -> asked.stop().isGiven() || (nanos > 0 && System.nanoTime() - end > 0));
    return Curing.of(
        asked.basis(),
        one.week().orElseThrow(),
        one.row().offers().orElseThrow(),
        asked.needMin(),
        soon);
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
