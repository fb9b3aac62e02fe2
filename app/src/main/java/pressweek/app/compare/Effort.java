package pressweek.app.compare;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import pressweek.data.plan.Settings;

/**
 * How every plan of a comparison is searched for.
 *
 * @param settings limits, and the first seed
 * @param seeds how many seeds
 * @param nowMin the present, minutes since 1970 UTC
 */
public record Effort(Settings settings, int seeds, int nowMin) {
  /** Plans of each scenario unless said otherwise. */
  public static final int SEEDS = 3;

  /** How long each plan is searched for unless said otherwise, seconds. */
  public static final int SECONDS = 20;

  /** Seeds are far enough from each other that the searches side by side never share one. */
  private static final long APART = 1_000;

  /** The seeds. */
  List<Long> all() {
    return LongStream.range(0, seeds).mapToObj(i -> settings.seed() + i * APART).toList();
  }

  /** The settings of a seed. */
  Settings with(long seed) {
    return new Settings(settings.seconds(), settings.steps(), seed);
  }

  /** True when the same plan comes of it on every machine, whatever else that does. */
  boolean repeatable() {
    return settings.steps() > 0;
  }

  /** The effort in a sentence. */
  public String words() {
    String limit =
        repeatable()
            ? String.format(Locale.ROOT, "%,d steps", settings.steps())
            : String.format(Locale.ROOT, "%,d s", settings.seconds());
    String numbers = all().stream().map(String::valueOf).collect(Collectors.joining(", "));
    return "Every plan was searched for by "
        + limit
        + (seeds == 1 ? ", with seed " : ", with seeds ")
        + numbers
        + ".";
  }
}
