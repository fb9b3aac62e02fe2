package pressweek.reports.compare;

import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The cells of a table of figures in words: value, range over the seeds, and difference. */
public final class FigureCells {
  private final SideBySide all;

  /** The cells of a comparison. */
  public FigureCells(SideBySide all) {
    this.all = all;
  }

  /** What a row is: the figure's words and its unit. */
  public String heading(Figure figure) {
    String unit =
        figure.unit() == Figure.Unit.MONEY
            ? all.money().map(r -> r.currency()).orElse("")
            : figure.unit().symbol();
    return figure.words() + (unit.isEmpty() ? "" : ", " + unit);
  }

  /** The value of a side's cheapest plan; empty when it has none. */
  public String value(Tried tried, Figure figure) {
    return tried.best().map(p -> figure.brief(figure.of(p.figures()))).orElse("");
  }

  /** The same with the least and the most over its seeds, where they differ. */
  public String range(Tried tried, Figure figure) {
    List<Double> values = tried.values(figure, tried);
    String least = figure.brief(Collections.min(values));
    String most = figure.brief(Collections.max(values));
    String best = value(tried, figure);
    return least.equals(most) ? best : best + " (" + least + " to " + most + ")";
  }

  /** How a side differs from the folder as it stands, and how sure that is; empty for none. */
  public String difference(Tried tried, Figure figure) {
    Optional<Tried.Planned> base = all.base().best();
    Optional<Tried.Planned> own = tried.best();
    if (base.isEmpty() || own.isEmpty() || tried.equals(all.base())) {
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
}
