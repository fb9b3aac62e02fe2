package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.sweep.SweepFile;
import pressweek.app.sweep.SweepLists;
import pressweek.app.sweep.SweepReading;
import pressweek.app.sweep.SweepText;
import pressweek.app.sweep.Sweeping;
import pressweek.app.sweep.Worker;

/** {@code pressweek sweep}: many plans at once, each of them computed once. */
@Command(
    name = "sweep",
    description = {
      "Plans folders with every scenario and every seed of sweep.json, and writes their figures as sweep.csv and sweep_results.json. What is in the store already is not computed again: the same command goes on where it was broken off, by Ctrl-C or otherwise.",
      "With a database of PostgreSQL as its store, programs of the command work on any machine take part."
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:every plan is there",
      "1:a plan is missing: a folder or scenario cannot be planned, or the sweep was broken off",
      "2:bad input or arguments, or the store cannot be used",
      "3:a plan breaks a hard rule, or failed by a bug"
    })
final class SweepCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0..*",
      arity = "2..*",
      paramLabel = "FOLDER... SWEEP",
      hideParamSyntax = true,
      description = "plants' folders, then sweep.json")
  private List<Path> paths = List.of();

  @Option(
      names = "--out",
      paramLabel = "OUT",
      defaultValue = "out",
      description = "folder to write to (default: ${DEFAULT-VALUE})")
  private Path out;

  @Option(
      names = "--store",
      paramLabel = "FILE-OR-URL",
      defaultValue = "",
      description =
          "where tasks and results are kept: a file, or jdbc:postgresql://... (default: sweep.pressweek in OUT)")
  private String store = "";

  @Option(
      names = "--now",
      defaultValue = "",
      paramLabel = "TIME",
      description =
          "moment from which to plan, as 2026-11-30T06:00Z, where plant.json has no plan_start (default: now)")
  private String now = "";

  @Mixin private WorkOptions work;

  @Override
  public Integer call() throws IOException, StoreTrouble, InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    Worker.Settings settings = work.settings(spec, 0);
    return sweep(settings, err);
  }

  private int sweep(Worker.Settings settings, PrintWriter err)
      throws IOException, StoreTrouble, InterruptedException {
    OutFolder.check(spec, out, paths.subList(0, paths.size() - 1));
    Path file = paths.get(paths.size() - 1);
    if (!Files.isRegularFile(file)) {
      throw new ParameterException(
          spec.commandLine(), file + " is not a file; expected a sweep, such as sweep.json");
    }
    SweepFile.Reading reading = SweepFile.read(file);
    reading.errors().forEach(err::println);
    if (reading.sweep().isEmpty()) {
      err.println("no sweep: " + Counts.of(reading.errors().size(), "error") + " in " + file);
      return ExitCode.BAD_INPUT;
    }
    int nowMin = Moments.nextHour(spec.commandLine(), now);
    Path beside = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
    SweepReading.Read read =
        SweepReading.read(
            reading.sweep().get(), paths.subList(0, paths.size() - 1), beside, nowMin);
    Files.createDirectories(out);
    if (read.tasks().isEmpty()) {
      return written(Sweeping.nothing(read));
    }
    err.print(SweepText.faults(read.sweep()));
    err.flush();
    String place = store.isEmpty() ? out.resolve("sweep.pressweek").toString() : store;
    try (Store opened = Store.open(place)) {
      return sweep(opened, settings, read);
    }
  }

  private int sweep(Store opened, Worker.Settings settings, SweepReading.Read read)
      throws IOException, StoreTrouble, InterruptedException {
    Sweeping sweeping = new Sweeping(opened);
    Interrupt interrupt = new Interrupt(sweeping::stop);
    Runtime.getRuntime().addShutdownHook(interrupt);
    int code = ExitCode.BUG;
    try {
      Sweeping.Swept swept = swept(opened, settings, sweeping, read);
      code = written(swept);
    } finally {
      interrupt.finished(code);
    }
    return code;
  }

  private int written(Sweeping.Swept swept) throws IOException {
    List<Path> files = SweepLists.write(swept, out);
    PrintWriter text = spec.commandLine().getOut();
    text.print(SweepText.of(swept));
    text.println();
    text.println("Written: " + Counts.of(files.size(), "file") + " in " + out);
    text.flush();
    return code(swept);
  }

  /** Threads of 0 leave all work to others. */
  private Sweeping.Swept swept(
      Store opened, Worker.Settings settings, Sweeping sweeping, SweepReading.Read read)
      throws StoreTrouble, InterruptedException {
    SweepProgress progress = new SweepProgress(spec.commandLine().getErr());
    if (settings.threads() == 0) {
      return sweeping.sweep(read, progress);
    }
    try (Worker worker = new Worker(opened, settings)) {
      worker.start();
      return sweeping.sweep(read, progress);
    }
  }

  private static int code(Sweeping.Swept swept) {
    if (swept.isBroken()) {
      return ExitCode.BUG;
    }
    return swept.isWhole() ? ExitCode.DONE : ExitCode.UNPLACED;
  }

  /** Says on standard error how a sweep goes on, at most once a second. */
  private static final class SweepProgress implements Sweeping.Watcher {
    private static final Duration OFTEN = Duration.ofSeconds(1);

    private final PrintWriter err;
    private Duration said = Duration.ZERO;
    private int left = -1;

    SweepProgress(PrintWriter err) {
      this.err = err;
    }

    @Override
    public void seen(Sweeping.Progress progress) {
      boolean due = progress.elapsed().minus(said).compareTo(OFTEN) >= 0 || progress.left() == 0;
      if (progress.left() == left || (left >= 0 && !due)) {
        return;
      }
      left = progress.left();
      said = progress.elapsed();
      err.println(words(progress));
      err.flush();
    }

    private static String words(Sweeping.Progress progress) {
      String known = progress.reused() == 0 ? "" : ", " + progress.reused() + " were known";
      String failed = progress.faults() == 0 ? "" : ", " + progress.faults() + " failed";
      String left =
          progress.left() == 0 || progress.done() == 0
              ? ""
              : "; about " + time(progress.timeLeft()) + " left";
      return progress.done() + progress.reused() + " of " + progress.all() + known + failed + left;
    }

    private static String time(Duration left) {
      long seconds = Math.max(1, left.toSeconds());
      return seconds < 120 ? seconds + " s" : (seconds + 59) / 60 + " min";
    }
  }
}
