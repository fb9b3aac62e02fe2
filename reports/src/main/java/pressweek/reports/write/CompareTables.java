package pressweek.reports.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import pressweek.reports.compare.Figure;
import pressweek.reports.compare.SideBySide;
import pressweek.reports.compare.Tried;
import pressweek.reports.markup.Element;

/** The tables of a comparison. */
final class CompareTables {
  private final SideBySide all;
  private final List<Tried> shown;

  CompareTables(SideBySide all) {
    this.all = all;
    this.shown = all.shown();
  }

  /** Figures under headings, each with its range over the seeds and its difference. */
  Element full(List<Figure> figures) {
    PageTable<Figure> table =
        new PageTable<Figure>("figures").text("figure", f -> f.words() + unit(f));
    for (Tried tried : shown) {
      boolean base = tried.equals(all.base());
      table.cell(
          tried.name(),
          f -> {
            Element cell = Element.of("td", "figure").add("div", range(tried, f));
            return base ? cell : cell.add(Element.of("div", "muted").text(difference(tried, f)));
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
    PageTable<Figure> table =
        new PageTable<Figure>("figures").text("figure", f -> f.words() + unit(f));
    for (Tried tried : shown) {
      table.figure(
          tried.name(),
          f -> {
            String value = tried.best().map(p -> f.brief(f.of(p.figures()))).orElse("");
            String difference = tried.equals(all.base()) ? "" : difference(tried, f);
            return difference.isEmpty() ? value : value + " (" + difference + ")";
          });
    }
    return table.rows(figures).element();
  }

  private String unit(Figure figure) {
    String unit =
        figure.unit() == Figure.Unit.MONEY
            ? all.money().map(r -> r.currency()).orElse("")
            : figure.unit().symbol();
    return unit.isEmpty() ? "" : ", " + unit;
  }

  private static String range(Tried tried, Figure figure) {
    List<Double> values = tried.values(figure, tried);
    String best = tried.best().map(p -> figure.brief(figure.of(p.figures()))).orElse("");
    String least = figure.brief(Collections.min(values));
    String most = figure.brief(Collections.max(values));
    return least.equals(most) ? best : best + " (" + least + " to " + most + ")";
  }

  private String difference(Tried tried, Figure figure) {
    Optional<Tried.Planned> base = all.base().best();
    Optional<Tried.Planned> own = tried.best();
    if (base.isEmpty() || own.isEmpty()) {
      return "";
    }
    double more = figure.of(own.get().figures()) - figure.of(base.get().figures());
    if (figure.difference(more).chars().noneMatch(c -> c >= '1' && c <= '9')) {
      return "no difference";
    }
    return switch (tried.certainty(figure, all.base())) {
      case SAME -> figure.difference(more);
      case SURE -> figure.difference(more) + ", sure";
      case WITHIN -> figure.difference(more) + ", not sure";
      case UNTOLD -> figure.difference(more);
    };
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
