package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import pressweek.reports.compare.Figure;
import pressweek.reports.compare.FigureCells;
import pressweek.reports.compare.SideBySide;
import pressweek.reports.compare.Tried;
import pressweek.reports.markup.Element;

/** The tables of a comparison. */
final class CompareTables {
  private final SideBySide all;
  private final List<Tried> shown;
  private final FigureCells cells;

  CompareTables(SideBySide all) {
    this.all = all;
    this.shown = all.shown();
    this.cells = new FigureCells(all);
  }

  /** Figures under headings, each with its range over the seeds and its difference. */
  Element full(List<Figure> figures) {
    PageTable<Figure> table = new PageTable<Figure>("figures").text("figure", cells::heading);
    for (Tried tried : shown) {
      boolean base = tried.equals(all.base());
      table.cell(
          tried.name(),
          f -> {
            Element cell = Element.of("td", "figure").add("div", cells.range(tried, f));
            return base
                ? cell
                : cell.add(Element.of("div", "muted").text(cells.difference(tried, f)));
          });
    }
    figures.stream()
        .map(Figure::group)
        .distinct()
        .forEach(g -> table.group(g, figures.stream().filter(f -> f.group().equals(g)).toList()));
    return Element.of("div", "scroller").attr("tabindex", "0").add(table.element());
  }

  /** A line a figure, without headings and ranges, so that a sheet of paper holds it. */
  Element brief(List<Figure> figures) {
    PageTable<Figure> table = new PageTable<Figure>("figures").text("figure", cells::heading);
    for (Tried tried : shown) {
      table.figure(
          tried.name(),
          f -> {
            String value = cells.value(tried, f);
            String difference = cells.difference(tried, f);
            return difference.isEmpty() ? value : value + " (" + difference + ")";
          });
    }
    return table.rows(figures).element();
  }

  private record Row(Tried tried, Tried.Planned planned) {}

  /** Every plan by its seed. */
  Element plans() {
    List<Row> rows = new ArrayList<>();
    all.all().forEach(t -> t.plans().forEach(p -> rows.add(new Row(t, p))));
    PageTable<Row> table =
        new PageTable<Row>("narrow")
            .text("scenario", r -> r.tried().name())
            .figure("seed", r -> Long.toString(r.planned().seed()))
            .text("audit", r -> r.planned().sound() ? "passed" : "rejected")
            .figure("on time", r -> sound(r, Figure.ON_TIME))
            .figure("days late", r -> sound(r, Figure.LATE_DAYS));
    all.money()
        .ifPresent(
            m -> table.figure("avoidable cost, " + m.currency(), r -> sound(r, Figure.COST)));
    return table
        .text("", r -> r.tried().best().filter(r.planned()::equals).isPresent() ? "shown" : "")
        .rows(rows)
        .element();
  }

  private static String sound(Row row, Figure figure) {
    return row.planned().sound() ? figure.text(figure.of(row.planned().figures())) : "";
  }
}
