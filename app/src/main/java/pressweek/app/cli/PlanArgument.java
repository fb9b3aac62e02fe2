package pressweek.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import pressweek.app.plan.EarlierPlans;

/** A plan.json that a command is given. */
final class PlanArgument {
  private PlanArgument() {}

  /**
   * The plan, and the one that lies where a new one will.
   *
   * @throws IOException when a file cannot be read at all; what else is wrong with the plan is a
   *     bad argument
   */
  static EarlierPlans earlier(CommandSpec spec, Path file, Path out) throws IOException {
    EarlierPlans named = EarlierPlans.replacing(file, out);
    if (named.replaced().isEmpty()) {
      String why =
          named.complaints().isEmpty() ? "no such file" : String.join("; ", named.complaints());
      throw new ParameterException(
          spec.commandLine(), file + ": " + why + "; expected a plan.json");
    }
    return named;
  }
}
