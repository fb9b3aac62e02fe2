package pressweek.reports.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import pressweek.data.plan.Run;
import pressweek.reports.changes.ChangeWork.AtOnce;
import pressweek.reports.changes.ChangeWork.MoldMove;
import pressweek.reports.changes.ChangeWork.Tasks;
import pressweek.reports.schedule.Kinds;
import pressweek.reports.schedule.PlanBook;

/** What the setters do and what they need for it, in order of time. */
public final class ChangeWorkReport {
  private final PlanBook book;
  private final List<ChangeRow> rows;
  private final MoldMoves molds;
  private final BarrelStep barrel;
  private final FirstArticle firstArticle;
  private final SetterTasks tasks;

  private ChangeWorkReport(PlanBook book) {
    this.book = book;
    this.rows = ChangeReport.rows(book);
    this.molds = new MoldMoves(book);
    this.barrel = new BarrelStep(book);
    this.firstArticle = new FirstArticle(book);
    this.tasks = new SetterTasks(book, molds, barrel);
  }

  /** The rows of {@link ChangeReport}, each with what it takes. */
  public static List<ChangeWork> rows(PlanBook book) {
    return book.once(ChangeWorkReport.class, () -> new ChangeWorkReport(book).all());
  }

  private List<ChangeWork> all() {
    return rows.stream().map(this::work).toList();
  }

  private ChangeWork work(ChangeRow row) {
    MoldMove out = molds.out(row);
    MoldMove in = molds.in(row);
    boolean exchanges = book.run(row.run()).map(Run::change).filter(Kinds::exchanges).isPresent();
    String checks = exchanges ? firstArticle.of(row) : "";
    Tasks todo =
        book.run(row.run())
            .map(r -> tasks.of(r, row, checks))
            .orElseGet(() -> tasks.ofDismount(row));
    return new ChangeWork(
        row,
        out,
        in,
        barrel.temperature(row),
        checks,
        atOnce(row),
        todo,
        notComputed(row, out, in));
  }

  private AtOnce atOnce(ChangeRow row) {
    List<ChangeRow> others =
        rows.stream().filter(r -> r != row && r.span().overlaps(row.span())).toList();
    Stream<ChangeRow> both = Stream.concat(Stream.of(row), others.stream());
    int most =
        both.map(ChangeRow::span)
            .map(s -> Math.max(s.fromMin(), row.span().fromMin()))
            .mapToInt(minute -> 1 + count(others, minute))
            .max()
            .orElse(1);
    return new AtOnce(most, others.stream().map(ChangeRow::press).distinct().sorted().toList());
  }

  private static int count(List<ChangeRow> rows, int minute) {
    return (int) rows.stream().map(ChangeRow::span).filter(s -> s.contains(minute)).count();
  }

  private List<String> notComputed(ChangeRow row, MoldMove out, MoldMove in) {
    List<String> lines = new ArrayList<>();
    missing(lines, row.moldOut(), out);
    missing(lines, row.moldIn(), in);
    if (barrel.unknown(row)) {
      lines.add("temperature: resins.csv melt_c of " + barrel.unknownResins(row));
    }
    return lines;
  }

  private void missing(List<String> lines, String mold, MoldMove move) {
    if (mold.isEmpty()) {
      return;
    }
    if (move.weightKg().equals(OptionalDouble.empty())) {
      lines.add("weight: molds.csv weight_kg of " + mold);
    }
    if (molds.place(mold).isEmpty()) {
      lines.add("place: molds.csv place of " + mold);
    }
  }
}
