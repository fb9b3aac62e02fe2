package pressweek.reports.compare;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pressweek.data.plan.Rule;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;

/** A comparison as lists: the figures, the plans, and the numbers behind each picture. */
public final class CompareLists {
  private static final Paper PAPER = new Paper("", "", false, "Nothing to compare.");
  private static final double MONEY = 100_000;

  private final SideBySide all;

  private CompareLists(SideBySide all) {
    this.all = all;
  }

  /** The figures first, which are {@code compare.csv}. */
  public static List<Listing> of(SideBySide all) {
    CompareLists lists = new CompareLists(all);
    List<Listing> made = new ArrayList<>();
    made.add(lists.figures());
    made.add(lists.plans());
    if (all.money().isPresent()) {
      made.add(lists.cost());
    }
    made.add(lists.load());
    made.add(lists.shifts());
    made.add(lists.lines());
    return List.copyOf(made);
  }

  private record FigureRow(Figure figure, Tried tried) {}

  private Listing figures() {
    List<FigureRow> rows = new ArrayList<>();
    for (Figure figure : all.figures()) {
      all.shown().forEach(t -> rows.add(new FigureRow(figure, t)));
    }
    return new ListingColumns<FigureRow>()
        .text("figure", r -> r.figure().key())
        .text("words", r -> r.figure().words())
        .text("unit", r -> unit(r.figure()))
        .text("scenario", r -> r.tried().name())
        .decimalIfAny("best_plan", r -> best(r).map(v -> number(r.figure(), v)))
        .decimalIfAny("least", r -> Optional.of(number(r.figure(), Collections.min(values(r)))))
        .decimalIfAny("most", r -> Optional.of(number(r.figure(), Collections.max(values(r)))))
        .decimalIfAny("difference", r -> difference(r).map(v -> number(r.figure(), v)))
        .text("certainty", this::certainty)
        .listing("compare", "Scenarios side by side", PAPER, rows);
  }

  private String unit(Figure figure) {
    return figure.unit() == Figure.Unit.MONEY
        ? all.money().map(r -> r.currency()).orElse("")
        : figure.unit().symbol();
  }

  private static Optional<Double> best(FigureRow row) {
    return row.tried().best().map(p -> row.figure().of(p.figures()));
  }

  private static List<Double> values(FigureRow row) {
    return row.tried().values(row.figure(), row.tried());
  }

  private Optional<Double> difference(FigureRow row) {
    Optional<Double> base = all.base().best().map(p -> row.figure().of(p.figures()));
    return row.tried().equals(all.base()) || base.isEmpty()
        ? Optional.empty()
        : best(row).map(v -> v - base.get());
  }

  private String certainty(FigureRow row) {
    return row.tried().equals(all.base()) || all.base().best().isEmpty()
        ? ""
        : row.tried().certainty(row.figure(), all.base()).name().toLowerCase(Locale.ROOT);
  }

  private static BigDecimal number(Figure figure, double value) {
    double shown = figure.unit() == Figure.Unit.MONEY ? value / MONEY : figure.unit().shown(value);
    return BigDecimal.valueOf(shown).setScale(3, RoundingMode.HALF_UP);
  }

  private record PlanRow(Tried tried, Tried.Planned planned) {}

  private Listing plans() {
    List<PlanRow> rows = new ArrayList<>();
    all.all().forEach(t -> t.plans().forEach(p -> rows.add(new PlanRow(t, p))));
    ListingColumns<PlanRow> columns =
        new ListingColumns<PlanRow>()
            .text("scenario", r -> r.tried().name())
            .number("seed", r -> (int) r.planned().seed())
            .text("audit", r -> r.planned().sound() ? "passed" : "rejected")
            .text("shown", r -> isBest(r) ? "yes" : "");
    for (Figure figure : all.figures()) {
      columns.decimalIfAny(
          figure.key(),
          r ->
              r.planned().sound()
                  ? Optional.of(number(figure, figure.of(r.planned().figures())))
                  : Optional.empty());
    }
    return columns.listing("plans", "Every plan", PAPER, rows);
  }

  private static boolean isBest(PlanRow row) {
    return row.tried().best().filter(row.planned()::equals).isPresent();
  }

  private record CostRow(Rule rule, Tried tried) {}

  private Listing cost() {
    List<CostRow> rows = new ArrayList<>();
    for (Rule rule : CostPicture.rules(all.shown())) {
      all.shown().forEach(t -> rows.add(new CostRow(rule, t)));
    }
    return new ListingColumns<CostRow>()
        .text("rule", r -> r.rule().name().toLowerCase(Locale.ROOT))
        .text("words", r -> r.rule().sentence())
        .text("scenario", r -> r.tried().name())
        .decimalIfAny(
            "amount",
            r ->
                Optional.of(
                    BigDecimal.valueOf(CostPicture.amount(r.tried(), r.rule()) / MONEY)
                        .setScale(2, RoundingMode.HALF_UP)))
        .listing("cost", "Avoidable cost by its parts", PAPER, rows);
  }

  private record LoadRow(Tried tried, Load load) {}

  private Listing load() {
    List<LoadRow> rows = new ArrayList<>();
    for (Tried tried : all.shown()) {
      tried
          .best()
          .ifPresent(p -> p.figures().loads().days().forEach(l -> rows.add(new LoadRow(tried, l))));
    }
    return loads("press", true).listing("load", "Load of each press by day", PAPER, rows);
  }

  private Listing shifts() {
    List<LoadRow> rows = new ArrayList<>();
    for (Tried tried : all.shown()) {
      tried
          .best()
          .ifPresent(
              p -> p.figures().loads().shifts().forEach(l -> rows.add(new LoadRow(tried, l))));
    }
    return loads("shift", false).listing("shifts", "Load of each shift", PAPER, rows);
  }

  private static ListingColumns<LoadRow> loads(String what, boolean days) {
    ListingColumns<LoadRow> columns = new ListingColumns<LoadRow>().text(what, r -> r.load().of());
    if (days) {
      columns.text("day", r -> r.load().when());
    }
    return columns
        .text("scenario", r -> r.tried().name())
        .number("busy_min", r -> r.load().busyMin())
        .number("setup_min", r -> r.load().setupMin())
        .number("production_min", r -> r.load().productionMin())
        .decimalIfAny(
            "load_pct",
            r ->
                Optional.of(
                    BigDecimal.valueOf(r.load().percent()).setScale(1, RoundingMode.HALF_UP)));
  }

  private record LineRow(Tried tried, LineMove move) {}

  private Listing lines() {
    List<LineRow> rows = new ArrayList<>();
    for (Tried tried : all.scenarios()) {
      moves(all.base(), tried).forEach(m -> rows.add(new LineRow(tried, m)));
    }
    return new ListingColumns<LineRow>()
        .text("scenario", r -> r.tried().name())
        .text("line", r -> r.move().line())
        .text("item", r -> r.move().item())
        .text("customer", r -> r.move().customer())
        .text("as_it_stands", r -> r.move().before().words())
        .text("in_the_scenario", r -> r.move().after().words())
        .listing("lines", "Lines that change sides", PAPER, rows);
  }

  /** The lines that change sides between the best plans of two scenarios; none without them. */
  public static List<LineMove> moves(Tried base, Tried tried) {
    return base.best().isPresent() && tried.best().isPresent()
        ? LineMove.between(base.best().get().book(), tried.best().get().book())
        : List.of();
  }
}
