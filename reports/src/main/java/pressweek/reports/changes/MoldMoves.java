package pressweek.reports.changes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Run;
import pressweek.data.problem.Mold;
import pressweek.reports.changes.ChangeWork.MoldMove;
import pressweek.reports.schedule.PlanBook;

/** Where molds come from and go to: a press before or after, and the place where they are kept. */
final class MoldMoves {
  private final PlanBook book;
  private final List<Off> taken = new ArrayList<>();

  /**
   * A mold that is taken off a press.
   *
   * @param fromMin first minute at which that begins, since 1970 UTC
   * @param words when it is off, in words
   */
  private record Off(String mold, String press, int fromMin, String words) {}

  MoldMoves(PlanBook book) {
    this.book = book;
    for (Dismount d : book.plan().dismounts()) {
      taken.add(
          new Off(d.mold(), d.press(), d.startMin(), "off " + book.clock().brief(d.endMin())));
    }
    for (Run run : book.plan().runs()) {
      String before = run.change().from().mold();
      if (!before.isEmpty() && !before.equals(run.change().to().mold())) {
        int from = run.change().startMin();
        taken.add(new Off(before, run.press(), from, "changed from " + book.clock().brief(from)));
      }
    }
  }

  /** The mold that a change puts on. */
  MoldMove in(ChangeRow row) {
    if (row.moldIn().isEmpty()) {
      return MoldMove.NONE;
    }
    List<String> places = new ArrayList<>();
    otherPress(row).ifPresent(places::add);
    place(row.moldIn()).ifPresent(places::add);
    return new MoldMove(weightKg(row.moldIn()), places);
  }

  /** The press from which the mold comes: {@code V2, off Mon 10:20}; empty when from store. */
  Optional<String> otherPress(ChangeRow row) {
    return taken.stream()
        .filter(o -> o.mold().equals(row.moldIn()) && o.fromMin() <= row.span().fromMin())
        .max(Comparator.comparingInt(Off::fromMin))
        .map(o -> o.press() + ", " + o.words());
  }

  /** The mold that a change or a dismount takes off. */
  MoldMove out(ChangeRow row) {
    if (row.moldOut().isEmpty()) {
      return MoldMove.NONE;
    }
    List<String> places = new ArrayList<>();
    place(row.moldOut()).ifPresent(places::add);
    next(row).ifPresent(places::add);
    return new MoldMove(weightKg(row.moldOut()), places);
  }

  private Optional<String> next(ChangeRow row) {
    return book.plan().runs().stream()
        .filter(r -> r.change().to().mold().equals(row.moldOut()))
        .filter(r -> !r.change().from().mold().equals(row.moldOut()))
        .filter(r -> r.change().startMin() >= row.span().fromMin())
        .min(Comparator.comparingInt(r -> r.change().startMin()))
        .map(r -> "then to " + r.press() + ", " + book.clock().brief(r.change().startMin()));
  }

  /** Where the mold is kept; empty when not known. */
  Optional<String> place(String mold) {
    return book.mold(mold).map(m -> m.body().place()).filter(p -> !p.isBlank());
  }

  private OptionalDouble weightKg(String mold) {
    return book.mold(mold).map(Mold::body).map(Mold.Body::weightKg).orElse(OptionalDouble.empty());
  }
}
