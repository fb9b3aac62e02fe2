package pressweek.reports.stress;

import java.util.List;
import java.util.function.DoubleFunction;
import pressweek.data.stress.Estimate;

/**
 * A figure of one plan against another, in words: every difference with its direction.
 *
 * @param what the figure
 * @param unit what stands before its value; may be empty
 * @param more this plan less the other
 * @param moreIsBetter true where more of it is better
 * @param form a value as a person reads it
 * @param above what a difference above nought is called
 * @param below what one below nought is called
 */
record Versus(
    String what,
    String unit,
    Estimate more,
    boolean moreIsBetter,
    DoubleFunction<String> form,
    String above,
    String below) {

  /** Who holds better by all figures together. */
  static String verdict(List<Versus> figures) {
    boolean better = figures.stream().anyMatch(f -> f.side() > 0);
    boolean worse = figures.stream().anyMatch(f -> f.side() < 0);
    if (better && worse) {
      return "Which plan holds better depends on what counts:";
    }
    return better
        ? "This plan holds better."
        : worse ? "The other plan holds better." : "Neither surely holds better.";
  }

  /** 1 where this plan is surely better, -1 where it is surely worse, else 0. */
  private int side() {
    if (!more.isSure()) {
      return 0;
    }
    return more.mean() > 0 == moreIsBetter ? 1 : -1;
  }

  /** What this plan has more or less, and how sure that is. */
  String sentence() {
    String verdict =
        switch (side()) {
          case 1 -> "This plan holds better by ";
          case -1 -> "This plan holds worse by ";
          default -> "Neither plan surely holds better by ";
        };
    return "%s%s: %s (95 %% sure: %s to %s)."
        .formatted(verdict, what, difference(), signed(more.low()), signed(more.high()));
  }

  private String difference() {
    String size = form.apply(Math.abs(more.mean()));
    return nought(size) ? "no difference" : unit + size + " " + (more.mean() < 0 ? below : above);
  }

  private static boolean nought(String size) {
    return size.chars().noneMatch(c -> c >= '1' && c <= '9');
  }

  private String signed(double value) {
    String size = form.apply(Math.abs(value));
    return nought(size) ? size : (value < 0 ? "-" : "+") + size;
  }
}
