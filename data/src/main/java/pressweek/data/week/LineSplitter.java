package pressweek.data.week;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.OrderRow;
import pressweek.data.molding.Amounts;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Job;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Quantity;
import pressweek.data.week.Attempt.Done;

/**
 * Splits a line that takes long in two parts of equal pieces, so that two molds may share it. Each
 * part has half of the line's weight.
 */
final class LineSplitter {
  private static final BigDecimal HOUR = BigDecimal.valueOf(60);

  private final Shop shop;
  private final LineReader lines;

  LineSplitter(Shop shop, LineReader lines) {
    this.shop = shop;
    this.lines = lines;
  }

  /** The two parts; empty when the line stays whole. */
  Optional<Made> split(OrderRow order, Netted netted, LineReader.Line whole) {
    if (shop.plant().splitOverH() <= 0 || lines.bound(order.id())) {
      return Optional.empty();
    }
    boolean begun = lines.bound(order.part(1).id()) || lines.bound(order.part(2).id());
    return begun || (isLong(whole.job()) && !reserved(order))
        ? halves(order, netted, whole.gaps())
        : Optional.empty();
  }

  private boolean isLong(Job job) {
    int quickest = job.options().stream().mapToInt(o -> o.pace().runMin()).min().orElse(0);
    long molds = job.options().stream().map(o -> o.mold()).distinct().count();
    BigDecimal overMin = BigDecimal.valueOf(shop.plant().splitOverH()).multiply(HOUR);
    return BigDecimal.valueOf(quickest).compareTo(overMin) > 0 && molds > 1;
  }

  private boolean reserved(OrderRow order) {
    return shop.reservations().any(order.order(), order.id());
  }

  private Optional<Made> halves(OrderRow order, Netted netted, Set<Gap> wholeGaps) {
    int carton = shop.plant().run().cartonMultiple();
    int good = Amounts.multiple(netted.needed() + netted.made(), carton);
    int first = Amounts.multiple((good + 1) / 2, carton);
    int second = good - first;
    if (second < 1) {
      return Optional.empty();
    }
    List<Job> jobs = new ArrayList<>();
    Set<Gap> gaps = EnumSet.noneOf(Gap.class);
    gaps.addAll(wholeGaps);
    List<Half> halves =
        List.of(
            new Half(order.part(1), order.quantity() - second, netted.fromStock(), first),
            new Half(order.part(2), second, 0, second));
    for (Half half : halves) {
      int made = lines.running(half.order().id()).map(row -> row.goodMade()).orElse(0);
      if (made >= half.good()) {
        continue;
      }
      Attempt<LineReader.Line> part = lines.read(half.order(), half.quantity(made));
      if (!(part instanceof Done<LineReader.Line> done)) {
        return Optional.empty();
      }
      jobs.add(half.job(done.value().job()));
      gaps.addAll(done.value().gaps());
    }
    jobs.sort(Comparator.comparing(Job::id));
    return jobs.isEmpty() ? Optional.empty() : Optional.of(new Made(jobs, Optional.empty(), gaps));
  }

  /** A part of a line: what of its quantity and of finished stock it has, and what it makes. */
  private record Half(OrderRow order, int ordered, int fromStock, int good) {
    Quantity quantity(int made) {
      return new Quantity(ordered, fromStock, made, good - made);
    }

    Job job(Job job) {
      OrderLine line = job.line();
      Deadline deadline = job.deadline();
      return new Job(
          new OrderLine(
              line.order(),
              line.line(),
              line.customer(),
              line.item(),
              ordered,
              line.requestedMin(),
              line.needs(),
              line.note()),
          job.item(),
          job.quantity(),
          new Deadline(
              deadline.earliestMin(),
              deadline.dueMin(),
              deadline.afterMin(),
              (deadline.weightHundredths() + 1) / 2),
          job.resin(),
          job.colour(),
          job.foodGrade(),
          job.options());
    }
  }
}
