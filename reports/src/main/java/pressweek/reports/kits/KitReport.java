package pressweek.reports.kits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Press;
import pressweek.reports.pulls.PullReport;
import pressweek.reports.pulls.PullRow;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.Stay;

/** The kits of a plan, one a run, by the time when they must be ready, then by press. */
public final class KitReport {
  private static final List<String> TWO = List.of("brought by", "received by");
  private static final List<String> THREE =
      List.of("brought by", "received by", "checked by a second person");

  private final PlanBook book;
  private final Map<String, List<PullRow>> pulls = new HashMap<>();

  private KitReport(PlanBook book) {
    this.book = book;
    for (PullRow row : PullReport.rows(book)) {
      pulls.computeIfAbsent(row.pull().run(), r -> new ArrayList<>()).add(row);
    }
  }

  /** The kits; a run under way with nothing left to bring has none. */
  public static List<Kit> kits(PlanBook book) {
    return book.once(KitReport.class, () -> new KitReport(book).all());
  }

  private List<Kit> all() {
    List<String> presses = book.presses().stream().map(Press::id).toList();
    return book.plan().runs().stream()
        .filter(run -> book.stay(run) != Stay.RUNNING || pulls.containsKey(run.id()))
        .map(this::kit)
        .sorted(
            Comparator.comparingInt(Kit::readyByMin)
                .thenComparingInt(kit -> presses.indexOf(kit.run().press())))
        .toList();
  }

  private Kit kit(Run run) {
    Job job = book.job(run);
    int lead = book.plan().problem().plant().crew().insertLeadMin();
    int readyBy =
        pulls.getOrDefault(run.id(), List.of()).stream()
            .mapToInt(PullRow::needByMin)
            .reduce(run.change().startMin() - lead, Math::max);
    return new Kit(run, job, readyBy, parts(run), job.foodGrade() ? THREE : TWO);
  }

  private List<KitPart> parts(Run run) {
    List<PullRow> rows = pulls.getOrDefault(run.id(), List.of());
    KitPlastic plastic = new KitPlastic(book, run);
    List<KitPart> brought = rows.stream().map(row -> brought(row, plastic)).toList();
    List<KitPart> parts = new ArrayList<>();
    add(parts, brought, PartKind.INSERT, List.of());
    gauges(rows).forEach(parts::add);
    add(parts, brought, PartKind.TIP, List.of());
    add(parts, brought, PartKind.RESIN, plastic.resin());
    add(parts, brought, PartKind.MASTERBATCH, plastic.masterbatch());
    add(parts, brought, PartKind.PACKAGING, List.of(packaging()));
    return parts;
  }

  /** Adds what is brought of a kind, else what stands for it. */
  private static void add(
      List<KitPart> parts, List<KitPart> brought, PartKind kind, List<KitPart> otherwise) {
    List<KitPart> its = brought.stream().filter(part -> part.kind() == kind).toList();
    parts.addAll(its.isEmpty() ? otherwise : its);
  }

  private static KitPart brought(PullRow row, KitPlastic plastic) {
    PartKind kind = PartKind.of(row.named().component());
    String words = kind == PartKind.INSERT ? row.named().words() : row.pull().insert();
    List<String> notes = new ArrayList<>(List.of(row.draw().words()));
    if (kind == PartKind.RESIN) {
      notes.add(plastic.regrind());
    } else if (kind == PartKind.MASTERBATCH) {
      notes.add(plastic.letDown());
    }
    notes.addAll(row.cautions());
    notes.removeIf(String::isEmpty);
    return new KitPart(
        kind,
        row.pull().insert(),
        words,
        row.pull().lot(),
        row.pull().bin(),
        Optional.of(row.pull().pieces()),
        String.join("; ", notes));
  }

  private List<KitPart> gauges(List<PullRow> rows) {
    Set<String> gauges = new LinkedHashSet<>();
    rows.stream()
        .flatMap(row -> book.insert(row.pull().insert()).stream())
        .forEach(insert -> Gauges.of(insert).ifPresent(gauges::add));
    return gauges.stream()
        .map(
            gauge ->
                new KitPart(
                    PartKind.GAUGE,
                    "",
                    gauge,
                    "",
                    "",
                    Optional.of(1),
                    "try the first pieces; class by the drawing"))
        .toList();
  }

  private static KitPart packaging() {
    return new KitPart(
        PartKind.PACKAGING,
        "",
        "by the packing instruction",
        "",
        "",
        Optional.empty(),
        "no carton or label is listed in bom.csv");
  }
}
