package pressweek.reports.kits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import pressweek.data.declared.Declared;
import pressweek.data.declared.Needs;
import pressweek.data.molding.Plastic;
import pressweek.data.molding.Shot;
import pressweek.data.plan.Run;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Declaration;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.Recipe;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.ScheduleReport;

/** Resin and masterbatch of a run, worked out from its shots; purge is not counted. */
final class KitPlastic {
  private static final Comparator<Lot> FIRST_OUT =
      Comparator.comparingInt((Lot lot) -> lot.expiresMin().orElse(Integer.MAX_VALUE))
          .thenComparingInt(Lot::receivedMin);

  private final PlanBook book;
  private final Job job;
  private final Run run;

  KitPlastic(PlanBook book, Run run) {
    this.book = book;
    this.job = book.job(run);
    this.run = run;
  }

  /** The resin; none when its name is not known. */
  List<KitPart> resin() {
    if (job.resin().isEmpty()) {
      return List.of();
    }
    Optional<Integer> natural =
        allGrams().map(g -> g - share().map(s -> (int) Math.round(g * s)).orElse(0));
    return List.of(
        new KitPart(
            PartKind.RESIN,
            job.resin(),
            job.resin(),
            "",
            "",
            natural,
            note(regrind(), listed(job.resin()))));
  }

  /** The masterbatch; none for a colour without, or when nothing is known of it. */
  List<KitPart> masterbatch() {
    Optional<Recipe> recipe = recipe();
    if (recipe.isEmpty() || recipe.get().letDownPct().orElse(1) == 0) {
      return List.of();
    }
    Recipe known = recipe.get();
    Optional<Integer> grams = allGrams().flatMap(g -> share().map(s -> (int) Math.ceil(g * s)));
    return List.of(
        new KitPart(
            PartKind.MASTERBATCH,
            known.masterbatch(),
            words(known),
            "",
            "",
            grams,
            note(letDown(known.letDownPct()), listed(known.masterbatch()))));
  }

  private Optional<Recipe> recipe() {
    List<Recipe> known =
        book.kitting().recipes().stream().filter(r -> r.colour().equals(job.colour())).toList();
    return known.stream()
        .filter(r -> r.resin().equals(job.resin()))
        .findFirst()
        .or(() -> known.stream().filter(r -> r.resin().isEmpty()).findFirst());
  }

  private String words(Recipe recipe) {
    String name = book.colour(job.resin(), job.colour()).map(Colour::name).orElse("");
    String colour = name.isBlank() ? job.colour() : job.colour() + ", " + name;
    return recipe.masterbatch().isEmpty()
        ? "masterbatch for " + colour
        : "masterbatch for " + colour + ": " + recipe.masterbatch();
  }

  /** What the let-down is, for whoever sets the doser; nothing when no recipe is known. */
  String letDown() {
    return recipe().map(r -> letDown(r.letDownPct())).orElse("");
  }

  /** What a let-down is. */
  static String letDown(OptionalDouble pct) {
    return pct.isPresent()
        ? "let-down "
            + String.format(Locale.ROOT, "%.2f", pct.getAsDouble()).replaceAll("\\.?0+$", "")
            + " % of the whole mass"
        : "let-down not in colours.csv";
  }

  private Optional<Double> share() {
    return recipe()
        .map(Recipe::letDownPct)
        .filter(OptionalDouble::isPresent)
        .map(pct -> pct.getAsDouble() / 100);
  }

  /** Plastic of all shots, those for start-up counted. */
  private Optional<Integer> allGrams() {
    int shots = ScheduleReport.row(book, run).shots();
    Optional<Integer> live = book.option(run).map(Option::making).map(m -> m.liveCavities());
    return book.plan().problem().floor().molds().stream()
        .filter(m -> m.id().equals(run.mold()))
        .map(Mold::cavities)
        .filter(c -> c.partG().isPresent() && live.isPresent())
        .map(c -> Shot.grams(live.orElse(0), c.partG().getAsDouble(), c.runnerG().orElse(0)))
        .map(shotG -> (int) Math.ceil(Plastic.shotsKg(shots, 0, shotG) * 1000))
        .findFirst();
  }

  /** For food-grade and declared work: whether runners may go back. */
  String regrind() {
    Declared declared = new Declared(book.kitting().declarations());
    List<String> needs = new ArrayList<>(Needs.of(job));
    needs.removeIf(n -> !n.equals(Needs.FOOD) && !n.equals(Needs.ROHS));
    if (needs.isEmpty()) {
      return "";
    }
    List<Optional<Declaration>> approvals =
        needs.stream().map(n -> declared.regrind(job.resin(), n, run.startMin())).toList();
    return approvals.stream().allMatch(Optional::isPresent)
        ? "regrind of its runners approved ("
            + approvals.stream()
                .flatMap(Optional::stream)
                .map(Declaration::source)
                .distinct()
                .collect(Collectors.joining(", "))
            + ")"
        : "no regrind: none is approved";
  }

  /** Usable lots that the plant lists, the one that expires or came first at the head. */
  private String listed(String what) {
    String ids =
        book.kitting().resinLots().stream()
            .filter(lot -> lot.what().equals(what) && lot.status() == LotStatus.USABLE)
            .filter(lot -> lot.expiresMin().orElse(Integer.MAX_VALUE) > run.endMin())
            .sorted(FIRST_OUT)
            .map(lot -> lot.bin().isEmpty() ? lot.id() : lot.id() + " in " + lot.bin())
            .collect(Collectors.joining(", "));
    return ids.isEmpty() ? "write down the lot that is loaded" : "lots at hand: " + ids;
  }

  private static String note(String first, String second) {
    return first.isEmpty() ? second : first + "; " + second;
  }
}
