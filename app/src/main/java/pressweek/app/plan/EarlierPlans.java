package pressweek.app.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.InputError;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;

/**
 * The plans before a new one.
 *
 * @param replaced the plan that the new one replaces; empty for none
 * @param numbers numbers that have been given out
 * @param complaints what was wrong with a plan file that could not be read
 */
public record EarlierPlans(Optional<Plan> replaced, List<String> numbers, List<String> complaints) {
  public EarlierPlans {
    numbers = List.copyOf(numbers);
    complaints = List.copyOf(complaints);
  }

  /**
   * The plan that lies where the new one will, which is the one that is replaced.
   *
   * @throws IOException when it cannot be read at all
   */
  public static EarlierPlans in(Path out) throws IOException {
    return replacing(out.resolve("plan.json"), out);
  }

  /**
   * A plan that is replaced, wherever it lies; the number of the one in the new plan's place is not
   * given out again.
   *
   * @throws IOException when one cannot be read at all
   */
  public static EarlierPlans replacing(Path file, Path out) throws IOException {
    List<String> complaints = new ArrayList<>();
    Optional<Plan> replaced = read(file, complaints);
    List<String> numbers = new ArrayList<>();
    replaced.map(p -> p.head().number()).ifPresent(numbers::add);
    Path there = out.resolve("plan.json");
    if (!there.normalize().equals(file.normalize())) {
      read(there, new ArrayList<>()).map(p -> p.head().number()).ifPresent(numbers::add);
    }
    return new EarlierPlans(replaced, numbers, complaints);
  }

  /** Number of the plan that is replaced; empty for none. */
  String replacedNumber() {
    return replaced.map(p -> p.head().number()).orElse("");
  }

  private static Optional<Plan> read(Path file, List<String> complaints) throws IOException {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    PlanFile.Reading reading = PlanFile.read(file);
    reading.errors().stream().map(InputError::toString).forEach(complaints::add);
    if (reading.plan().filter(p -> !isWhole(p)).isPresent()) {
      complaints.add(file.getFileName() + ": a run makes a line that is no job of the plan's week");
      return Optional.empty();
    }
    return reading.plan();
  }

  /** Else there would be nothing to compare a run by. */
  private static boolean isWhole(Plan plan) {
    Set<String> jobs = plan.problem().jobs().stream().map(Job::id).collect(Collectors.toSet());
    return plan.runs().stream().map(Run::job).allMatch(jobs::contains);
  }
}
