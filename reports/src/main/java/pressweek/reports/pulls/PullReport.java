package pressweek.reports.pulls;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.declared.Needs;
import pressweek.data.lookalike.InsertLook;
import pressweek.data.lookalike.LookAlikes;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Component;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Job;
import pressweek.data.problem.Press;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.schedule.Cautions;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.staging.StagingReport;

/**
 * What the material handlers bring: a row a pull, by shift, then by press in the plant's order,
 * then in walking order of the bins.
 */
public final class PullReport {
  /** Hexavalent chromium: OSHA 29 CFR 1910.1026. */
  static final String HEXAVALENT =
      "hexavalent chromium (OSHA 29 CFR 1910.1026): handle by the site procedure";

  /** Trivalent and hexavalent films come in the same colours. */
  static final String COLOUR_PROVES_NOTHING =
      "restricted substances: the finish's colour proves nothing, go by the lot's certificate";

  private final PlanBook book;
  private final List<String> pressOrder;
  private final LookAlikes lookAlikes;
  private final Draws draws;
  private final LotNotes lots;
  private final Map<String, Integer> staged = new HashMap<>();

  private PullReport(PlanBook book) {
    this.book = book;
    this.lots = new LotNotes(book);
    this.pressOrder = book.presses().stream().map(Press::id).toList();
    this.lookAlikes =
        LookAlikes.of(
            book.plan().problem().materials().inserts().stream().map(InsertLook::of).toList(),
            Set.copyOf(book.kitting().lookAlikes()));
    this.draws = Draws.of(book);
    StagingReport.rows(book).forEach(row -> staged.put(row.run().id(), row.needByMin()));
  }

  /** Plastic is wanted when its drying begins, all else when its press wants it. */
  private int needByMin(Pull pull) {
    int atPress = book.bringBy(pull);
    boolean weighed =
        book.run(pull.run()).filter(r -> book.component(r, pull.insert()).weighed()).isPresent();
    int atDryer = staged.getOrDefault(pull.run(), atPress);
    return weighed ? Math.max(pull.receiptMin(), Math.min(atPress, atDryer)) : atPress;
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
    return book.once(PullReport.class, () -> new PullReport(book).grouped());
  }

  private Map<Optional<ShiftSpan>, List<PullRow>> grouped() {
    Map<Optional<ShiftSpan>, List<Pull>> pulls = new LinkedHashMap<>();
    book.plan().pulls().stream()
        .sorted(Comparator.comparingInt(this::needByMin))
        .forEach(
            p ->
                pulls
                    .computeIfAbsent(book.bringing(p.press(), needByMin(p)), s -> new ArrayList<>())
                    .add(p));
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
                .thenComparing(Pull::bin, WalkingOrder.OF_BINS)
                .thenComparingInt(this::needByMin))
        .map(p -> row(p, shift, together))
        .toList();
  }

  private PullRow row(Pull pull, Optional<ShiftSpan> shift, BroughtTogether together) {
    Optional<Insert> insert = book.insert(pull.insert());
    List<String> cautions = new ArrayList<>(insert.map(together::cautions).orElse(List.of()));
    if (provesNothing(pull, insert)) {
      cautions.add(COLOUR_PROVES_NOTHING);
    }
    if (Cautions.isHexavalent(book, pull)) {
      cautions.add(HEXAVALENT);
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
        needByMin(pull),
        shift,
        book.run(pull.run()).map(book::job).map(Job::line),
        new PullRow.Named(
            component,
            component == Component.INSERT
                ? insert.map(InsertWords::of).orElse("not in inserts.csv")
                : component.word() + (component.weighed() ? ", in grams" : ""),
            insert.map(Insert::thread).orElse("")),
        draws.of(pull),
        cautions);
  }

  /**
   * True for a finish by which somebody could think to know that it has no restricted substance.
   */
  private boolean provesNothing(Pull pull, Optional<Insert> insert) {
    boolean finished = insert.filter(i -> !i.finish().isBlank()).isPresent();
    return finished
        && book.run(pull.run())
            .filter(run -> Needs.of(book.job(run)).contains(Needs.ROHS))
            .isPresent();
  }
}
