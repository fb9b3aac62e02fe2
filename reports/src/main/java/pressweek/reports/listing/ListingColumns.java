package pressweek.reports.listing;

import java.math.BigDecimal;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The columns of a list and how each cell is made from what a row is about. On paper a column is
 * headed by its name with spaces, unless {@link #headed} or {@link #offPaper} says otherwise.
 *
 * @param <R> what a row is made from
 */
public final class ListingColumns<R> {
  private final List<Column> columns = new ArrayList<>();
  private final List<Function<R, Cell>> cells = new ArrayList<>();

  /** Adds a column of text. */
  public ListingColumns<R> text(String name, Function<R, String> cell) {
    return column(name, Kind.TEXT, r -> new Cell.Text(cell.apply(r)));
  }

  /** Adds a column of lists of texts. */
  public ListingColumns<R> list(String name, Function<R, List<String>> cell) {
    return column(name, Kind.LIST, r -> new Cell.Texts(cell.apply(r)));
  }

  /** Adds a column of whole numbers. */
  public ListingColumns<R> number(String name, Function<R, Integer> cell) {
    return column(name, Kind.NUMBER, r -> number(BigDecimal.valueOf(cell.apply(r))));
  }

  /** Adds a column of thousandths, for example grams as kilograms, with three decimals. */
  public ListingColumns<R> thousandths(String name, Function<R, Integer> cell) {
    return column(name, Kind.NUMBER, r -> number(BigDecimal.valueOf(cell.apply(r), 3)));
  }

  /** Adds a column of thousandths of which some are not known. */
  public ListingColumns<R> thousandthsIfAny(String name, Function<R, Optional<Integer>> cell) {
    return column(
        name,
        Kind.NUMBER,
        r -> cell.apply(r).map(n -> number(BigDecimal.valueOf(n, 3))).orElse(Cell.EMPTY));
  }

  /** Adds a column of decimals, each with the places that it comes with. */
  public ListingColumns<R> decimal(String name, Function<R, BigDecimal> cell) {
    return column(name, Kind.NUMBER, r -> number(cell.apply(r)));
  }

  /** Adds a column of decimals of which some are not known, without zeros at their end. */
  public ListingColumns<R> decimalIfAny(String name, Function<R, Optional<BigDecimal>> cell) {
    return column(
        name,
        Kind.NUMBER,
        r ->
            cell.apply(r)
                .map(n -> n.signum() == 0 ? BigDecimal.ZERO : n.stripTrailingZeros())
                .map(n -> number(n.scale() < 0 ? n.setScale(0) : n))
                .orElse(Cell.EMPTY));
  }

  /** Adds a column of whole numbers of which some are not known. */
  public ListingColumns<R> numberIfAny(String name, Function<R, Optional<Integer>> cell) {
    return column(
        name,
        Kind.NUMBER,
        r -> cell.apply(r).map(n -> number(BigDecimal.valueOf(n))).orElse(Cell.EMPTY));
  }

  /** Adds a column of times on the plant's clock. */
  public ListingColumns<R> time(String name, Function<R, ZonedDateTime> cell) {
    return column(name, Kind.TIME, r -> new Cell.Time(cell.apply(r)));
  }

  /** Adds a column of times of which some are not known. */
  public ListingColumns<R> timeIfAny(String name, Function<R, Optional<ZonedDateTime>> cell) {
    return column(
        name, Kind.TIME, r -> cell.apply(r).map(t -> (Cell) new Cell.Time(t)).orElse(Cell.EMPTY));
  }

  /** Heads the last column by other words on paper. */
  public ListingColumns<R> headed(String heading) {
    int last = columns.size() - 1;
    Column column = columns.get(last);
    columns.set(last, new Column(column.name(), column.kind(), heading));
    return this;
  }

  /** Leaves the last column out on paper. */
  public ListingColumns<R> offPaper() {
    return headed("");
  }

  private static Cell number(BigDecimal value) {
    return new Cell.Number(value);
  }

  private ListingColumns<R> column(String name, Kind kind, Function<R, Cell> cell) {
    columns.add(new Column(name, kind, name.replace('_', ' ')));
    cells.add(cell);
    return this;
  }

  /** The list with these rows. */
  public Listing listing(String name, String title, Paper paper, List<R> rows) {
    List<List<Cell>> made =
        rows.stream().map(r -> cells.stream().map(c -> c.apply(r)).toList()).toList();
    return new Listing(name, title, paper, columns, made);
  }
}
