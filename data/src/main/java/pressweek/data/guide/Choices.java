package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** What may be written for fields. */
final class Choices {
  /** A number with more values than these is written with as many of them, evenly spread. */
  private static final int MOST_NUMBERS = 60;

  private static final int STEPS_WITHOUT_END = 20;

  private Choices() {}

  /** All that may be written for a field; of a number or a special at least its ends. */
  static List<Choice> of(Field field) {
    List<Choice> choices = new ArrayList<>();
    if (field instanceof Field.Table table) {
      table
          .entries()
          .forEach(
              (symbol, entry) -> choices.add(choice(field, symbol, entry.sets(), entry.line())));
    } else if (field instanceof Field.Number number) {
      for (BigDecimal written : numbers(number)) {
        String value = number.value(written);
        SlotWriter.digits(number, value)
            .ifPresent(
                text ->
                    choices.add(
                        new Choice(
                            text,
                            written.toPlainString(),
                            Map.of(field.attribute(), value),
                            field.frame().line())));
      }
    } else if (field instanceof Field.Special special) {
      for (String mark : special.marks().some()) {
        choices.add(choice(field, mark, Map.of(field.attribute(), mark), field.frame().line()));
      }
    }
    fills(field, choices);
    return List.copyOf(choices);
  }

  /** What fill characters may stand alone. */
  private static void fills(Field field, List<Choice> choices) {
    Field.Frame frame = field.frame();
    Fill fill = frame.fill();
    if (!fill.none().isEmpty()) {
      Map<String, String> says =
          field.attribute().isEmpty() ? Map.of() : Map.of(field.attribute(), "");
      String text = Fill.whole(fill.none(), frame.width());
      choices.add(new Choice(text, "", says, frame.line()));
    }
    if (!fill.standard().isEmpty()) {
      String text = Fill.whole(fill.standard(), frame.width());
      choices.add(new Choice(text, "", Map.of(), frame.line()));
    }
  }

  private static Choice choice(Field field, String symbol, Map<String, String> sets, int line) {
    return new Choice(SlotWriter.fit(symbol, field.frame()), symbol, sets, line);
  }

  /** The numbers of a field, in rising order. */
  private static List<BigDecimal> numbers(Field.Number field) {
    BigDecimal step = field.range().step().orElse(BigDecimal.ONE.movePointLeft(field.decimals()));
    BigDecimal first = field.range().min().orElse(step);
    BigDecimal last =
        field.range().max().orElse(first.add(step.multiply(count(STEPS_WITHOUT_END))));
    BigDecimal steps = last.subtract(first).divideToIntegralValue(step);
    long all = steps.min(count(Integer.MAX_VALUE)).longValue();
    long spread = Math.min(all, MOST_NUMBERS - 1);
    TreeSet<BigDecimal> numbers = new TreeSet<>();
    for (long i = 0; i <= spread; i++) {
      long at = spread == 0 ? 0 : Math.round((double) i * all / spread);
      numbers.add(first.add(step.multiply(count(at))));
    }
    return List.copyOf(numbers);
  }

  private static BigDecimal count(long number) {
    return BigDecimal.valueOf(number);
  }
}
