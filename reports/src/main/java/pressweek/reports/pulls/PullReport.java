package pressweek.reports.pulls;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.lookalike.InsertLook;
import pressweek.data.lookalike.LookAlikes;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Component;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Job;
import pressweek.data.problem.Press;
import pressweek.reports.hours.ShiftBook;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.schedule.Cautions;
import pressweek.reports.schedule.PlanBook;

/**
 * What the material handlers bring: a row a pull, by shift, then by press in the plant's order,
 * then by need-by time.
 */
public final class PullReport {
  private final PlanBook book;
  private final Map<String, Press> presses;
  private final List<String> pressOrder;
  private final LookAlikes lookAlikes;
  private final LotNotes lots;

  private PullReport(PlanBook book) {
    this.book = book;
    this.lots = new LotNotes(book);
    this.presses =
        book.presses().stream()
            .collect(Collectors.toMap(Press::id, p -> p, (first, next) -> first));
    this.pressOrder = book.presses().stream().map(Press::id).toList();
    this.lookAlikes =
        LookAlikes.of(
            book.plan().problem().materials().inserts().stream().map(InsertLook::of).toList(),
            Set.of());
  }

  /** The rows of the pull list. */
  public static List<PullRow> rows(PlanBook book) {
    List<PullRow> rows = new ArrayList<>();
    byShift(book).values().forEach(rows::addAll);
    return List.copyOf(rows);
  }

  /**
   * The rows by the shift in which they must be brought, in order of time; pulls without a shift
   * come first.
   */
  public static Map<Optional<ShiftSpan>, List<PullRow>> byShift(PlanBook book) {
    return new PullReport(book).grouped();
  }

  private Map<Optional<ShiftSpan>, List<PullRow>> grouped() {
    Map<Optional<ShiftSpan>, List<Pull>> pulls = new LinkedHashMap<>();
    book.plan().pulls().stream()
        .sorted(Comparator.comparingInt(Pull::needByMin))
        .forEach(p -> pulls.computeIfAbsent(shift(p), s -> new ArrayList<>()).add(p));
    Map<Optional<ShiftSpan>, List<PullRow>> rows = new LinkedHashMap<>();
    pulls.keySet().stream()
        .sorted(Comparator.comparingInt(PullReport::start))
        .forEach(s -> rows.put(s, rowsOf(s, pulls.getOrDefault(s, List.of()))));
    return rows;
  }

  private static int start(Optional<ShiftSpan> shift) {
    return shift.map(s -> s.span().fromMin()).orElse(Integer.MIN_VALUE);
  }

  private List<PullRow> rowsOf(Optional<ShiftSpan> shift, List<Pull> pulls) {
    List<Insert> brought =
        pulls.stream().flatMap(p -> book.insert(p.insert()).stream()).distinct().toList();
    BroughtTogether together = new BroughtTogether(lookAlikes, brought);
    return pulls.stream()
        .sorted(
            Comparator.comparingInt((Pull p) -> pressOrder.indexOf(p.press()))
                .thenComparingInt(Pull::needByMin))
        .map(p -> row(p, shift, together))
        .toList();
  }

  private PullRow row(Pull pull, Optional<ShiftSpan> shift, BroughtTogether together) {
    Optional<Insert> insert = book.insert(pull.insert());
    List<String> cautions = new ArrayList<>(insert.map(together::cautions).orElse(List.of()));
    if (Cautions.isHexavalent(book, pull)) {
      cautions.add("hexavalent chromium: handle by the site procedure");
    }
    if (pull.receiptMin() > 0) {
      cautions.add("from receipt " + book.clock().brief(pull.receiptMin()));
    }
    cautions.addAll(lots.of(pull));
    Component component =
        book.run(pull.run())
            .map(run -> book.component(run, pull.insert()))
            .orElse(Component.INSERT);
    return new PullRow(
        pull,
        shift,
        book.run(pull.run()).map(book::job).map(Job::line),
        component,
        component == Component.INSERT
            ? insert.map(InsertWords::of).orElse("not in inserts.csv")
            : component.word() + (component.weighed() ? ", in grams" : ""),
        insert.map(Insert::thread).orElse(""),
        cautions);
  }

  /**
   * The shift under way when the pull is needed, that of the press before any other. Between shifts
   * it is the one before, since the inserts must be there by then; before the first shift of the
   * plan it is that one.
   */
  private Optional<ShiftSpan> shift(Pull pull) {
    ShiftBook shifts = book.shifts();
    String calendar =
        Optional.ofNullable(presses.get(pull.press())).map(Press::calendar).orElse("");
    int start = book.extent().fromMin();
    return shifts
        .at(pull.needByMin(), List.of(s -> shifts.belongs(s.shift(), calendar), s -> true))
        .filter(s -> s.span().toMin() > start)
        .or(() -> shifts.before(pull.needByMin()).filter(s -> s.span().toMin() > start))
        .or(() -> shifts.after(Math.max(start, pull.needByMin())));
  }
}
