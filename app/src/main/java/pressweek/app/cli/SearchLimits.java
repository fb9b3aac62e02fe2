package pressweek.app.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import pressweek.app.compare.Effort;
import pressweek.data.plan.Settings;

/** How long a command may search. */
final class SearchLimits {
  private static final int DAY_SECONDS = 86_400;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "" + Effort.SECONDS,
      description = "how long to search, 1 to 86400 (default: ${DEFAULT-VALUE})")
  private int seconds;

  @Option(
      names = "--steps",
      paramLabel = "N",
      defaultValue = "0",
      description = "search so many steps instead: the same answer on every machine")
  private int steps;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "seed of the search (default: ${DEFAULT-VALUE})")
  private long seed;

  /** The limits; a bad argument is said. */
  Settings settings(CommandSpec spec) {
    BadArguments bad = new BadArguments();
    if (seconds < 1 || seconds > DAY_SECONDS) {
      bad.add("--seconds %d cannot be; expected 1 to %d".formatted(seconds, DAY_SECONDS));
    }
    if (steps < 0) {
      bad.add("--steps %d is negative; expected 0 or more".formatted(steps));
    }
    bad.check(spec.commandLine());
    return new Settings(steps > 0 ? 0 : seconds, steps, seed);
  }
}
