package pressweek.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import pressweek.app.plan.EarlierPlans;
import pressweek.data.files.Folder;
import pressweek.data.plan.Plan;

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
      throw new ParameterException(
          spec.commandLine(),
          named.complaints().isEmpty()
              ? file + ": no such file; expected a plan.json"
              : String.join("; ", named.complaints()));
    }
    return named;
  }

  /** A plan of another plant is a bad argument; one of a plant without a name may be any's. */
  static void checkPlant(CommandSpec spec, Path file, Plan plan, Folder folder) {
    String seen = plan.problem().plant().name();
    String expected = folder.plant().name();
    if (!seen.isEmpty() && !seen.equals(expected)) {
      String of =
          expected.isEmpty()
              ? "one of folder %s, whose plant has no name".formatted(folder.path())
              : "one of \"%s\", the plant of folder %s".formatted(expected, folder.path());
      throw new ParameterException(
          spec.commandLine(),
          "%s: the plan is of plant \"%s\"; expected %s".formatted(file, seen, of));
    }
  }
}
