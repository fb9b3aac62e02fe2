package pressweek.reports.compare;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import pressweek.data.plan.Rule;
import pressweek.reports.markup.Element;

/** Avoidable cost by its parts, a column a scenario. */
final class CostPicture {
  private static final double LABELS = 325;
  private static final double COLUMN = 155;
  private static final double BAR = 82;

  private final List<Tried> tried;

  private CostPicture(List<Tried> tried) {
    this.tried = tried;
  }

  static Element of(List<Tried> tried) {
    return new CostPicture(tried).element();
  }

  /** The rules that charge something in any of the best plans. */
  static List<Rule> rules(List<Tried> tried) {
    return Stream.of(Rule.values())
        .filter(r -> tried.stream().anyMatch(t -> amount(t, r) != 0))
        .toList();
  }

  /** What the best plan of a scenario is charged by a rule, thousandths of a cent. */
  static long amount(Tried tried, Rule rule) {
    return tried.best().map(p -> p.figures().cost().getOrDefault(rule, 0L)).orElse(0L);
  }

  private static long total(Tried tried) {
    return tried.best().map(p -> p.figures().avoidableCost()).orElse(0L);
  }

  private Element element() {
    List<Rule> rules = rules(tried);
    double width = LABELS + tried.size() * COLUMN;
    double height = BarTable.HEAD + (rules.size() + 1) * BarTable.ROW + 4;
    Element svg = BarTable.svg(width, height, "Avoidable cost by its parts");
    for (int i = 0; i < tried.size(); i++) {
      String name = BarTable.fitted(tried.get(i).name(), COLUMN - 8);
      svg.add(BarTable.text("large", LABELS + i * COLUMN, 15, name));
    }
    long most =
        rules.stream()
            .flatMap(r -> tried.stream().map(t -> amount(t, r)))
            .mapToLong(Long::longValue)
            .max()
            .orElse(1);
    long mostTotal = tried.stream().mapToLong(CostPicture::total).max().orElse(1);
    double y = BarTable.HEAD;
    row(svg, y, "all together", tried.stream().map(CostPicture::total).toList(), mostTotal);
    for (Rule rule : rules) {
      y += BarTable.ROW;
      row(svg, y, rule.sentence(), tried.stream().map(t -> amount(t, rule)).toList(), most);
    }
    return svg.add(BarTable.rule(height - 2, width));
  }

  private void row(Element svg, double y, String words, List<Long> amounts, long most) {
    boolean total = y == BarTable.HEAD;
    svg.add(BarTable.rule(y, LABELS + tried.size() * COLUMN));
    String fitted = BarTable.fitted(words, LABELS - 6);
    svg.add(BarTable.text(total ? "large" : "word", 0, y + 15, fitted));
    for (int i = 0; i < amounts.size(); i++) {
      double x = LABELS + i * COLUMN;
      double length = most == 0 ? 0 : BAR * amounts.get(i) / most;
      if (amounts.get(i) > 0) {
        svg.add(BarTable.bar(i == 0, x, y + 6, length, 10));
      }
      String money = String.format(Locale.ROOT, "%,d", Math.round(amounts.get(i) / 100_000.0));
      svg.add(BarTable.text(total ? "large" : "word", x + length + 5, y + 15, money));
    }
  }
}
