package pressweek.examples.speed;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import pressweek.data.problem.Problem;
import pressweek.examples.DrawnProblem;
import pressweek.examples.PlantSize;
import pressweek.solver.timing.Dispatch;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.WeekTables;

/**
 * How long one pass from sequences to clock times takes, from the first press to the last, on one
 * core: sequences of setup-aware dispatch, of the demo week and of drawn plants.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class PassSpeed {
  static final String DEMO = "demo week";

  /** Parameters of the dispatch: those that the planner tries first in a large week. */
  private static final double K1 = 1.0;

  private static final double K2 = 0.3;

  /** Which week: the demo week, or jobs and presses of a drawn one. */
  @Param({DEMO, "120x12", "1000x60", "5000x100"})
  private String plant = DEMO;

  private Sequences sequences = new Sequences(0, 0);
  private Runnable pass = () -> {};
  private long cost;

  /** The problem of a week by its name. */
  static Problem problem(String plant) throws IOException {
    if (plant.equals(DEMO)) {
      return DrawnProblem.read(Path.of("quillback-week"));
    }
    String[] size = plant.split("x", -1);
    return DrawnProblem.draw(
        new PlantSize(Integer.parseInt(size[0]), Integer.parseInt(size[1])), 1);
  }

  /** Reads or draws the week and dispatches it. */
  @Setup
  public void dispatch() {
    try {
      WeekTables week = new WeekTables(problem(plant));
      sequences = new Dispatch(week).atcs(K1, K2);
      TimingPass full = TimingPass.full(week);
      pass = () -> cost = full.run(sequences);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One pass. */
  @Benchmark
  public long pass() {
    pass.run();
    return cost;
  }
}
