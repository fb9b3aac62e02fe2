package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import pressweek.app.learn.LearnedFiles;
import pressweek.data.files.ActualRow;
import pressweek.data.files.AtomicFile;
import pressweek.data.files.Folder;
import pressweek.data.files.Scenario;
import pressweek.data.learning.Learning;

/** {@code pressweek learn}: what past runs say of the plant's standards. */
@Command(
    name = "learn",
    description = {
      "Compares what runs took (actuals.csv) with the plant's standards, recorded changes and efficiency, and proposes others by robust statistics, each with its runs, spread and interval. The folder itself is never changed.",
      "For example: pressweek learn FOLDER --out proposed"
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:the runs were compared",
      "2:the folder or its actuals.csv cannot be read, or DIR is the folder's own"
    })
final class LearnCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private FolderArgument folder;

  @Option(
      names = "--actuals",
      paramLabel = "FILE",
      defaultValue = "",
      description = "what runs took, CSV or XLSX (default: actuals.csv of the folder)")
  private String actuals = "";

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "",
      description =
          "folder to write to: standards.csv, changes_recorded.csv and plant.json with the proposals in them, those that change, and learned.diff; not the plant's own")
  private String out = "";

  @Override
  public Integer call() throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    return learn(err);
  }

  private int learn(PrintWriter err) throws IOException {
    Optional<Folder> read = folder.read(err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    if (!read.get().errors().isEmpty()) {
      read.get().errors().forEach(err::println);
      return ExitCode.BAD_INPUT;
    }
    Optional<Path> to = target(read.get());
    Optional<ActualsOption.Runs> runs = ActualsOption.read(actuals, read.get(), err);
    if (runs.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Learning.Learned learned = Learning.from(read.get(), runs.get().rows());
    PrintWriter text = spec.commandLine().getOut();
    text.print(
        LearnPrinter.text(learned.proposals(), runs.get(), read.get().plant().learnFromRuns()));
    unused(runs.get().rows()).forEach(text::println);
    if (to.isPresent()) {
      write(LearnedFiles.of(read.get(), learned), to.get(), text);
    }
    text.flush();
    return ExitCode.DONE;
  }

  /** Change times of which nobody knows from what: a change is from one thing to another. */
  private static List<String> unused(List<ActualRow> rows) {
    long count =
        rows.stream()
            .filter(r -> r.changeMin().real().isPresent() && r.from().mold().isEmpty())
            .count();
    return count == 0
        ? List.of()
        : Paragraph.of(
            "", Counts.of((int) count, "change time") + " not used: from_mold is empty.");
  }

  private static void write(LearnedFiles learned, Path to, PrintWriter text) throws IOException {
    for (String name : LearnedFiles.names()) {
      Files.deleteIfExists(to.resolve(name));
    }
    text.println();
    if (learned.files().isEmpty()) {
      text.println("Nothing to write");
      return;
    }
    text.println("Written");
    for (Map.Entry<String, byte[]> file : learned.files().entrySet()) {
      AtomicFile.write(to.resolve(file.getKey()), file.getValue());
      text.println("  " + to.resolve(file.getKey()));
    }
    learned.notes().forEach(note -> Paragraph.of("  ", note).forEach(text::println));
  }

  /** Proposals are written beside the folder, never into it, nor over what is something else. */
  private Optional<Path> target(Folder read) throws IOException {
    if (out.isEmpty()) {
      return Optional.empty();
    }
    Path to = Path.of(out);
    if (read.inputs().keySet().stream().anyMatch(name -> name.startsWith(Scenario.INPUT))) {
      throw bad("goes with the folder as it stands; expected no --scenario");
    }
    if ((Files.exists(to) && !Files.isDirectory(to))
        || out.toLowerCase(Locale.ROOT).endsWith(".csv")) {
      throw bad("is a file; expected a folder for " + String.join(", ", LearnedFiles.names()));
    }
    if (real(to).startsWith(read.path().toRealPath())) {
      throw bad("is the plant's own folder; expected another one, to be looked at first");
    }
    if (Files.isDirectory(to)) {
      try (Stream<Path> there = Files.list(to)) {
        Optional<String> other =
            there
                .map(path -> String.valueOf(path.getFileName()))
                .filter(name -> !LearnedFiles.names().contains(name))
                .sorted()
                .findFirst();
        if (other.isPresent()) {
          throw bad("holds " + other.get() + "; expected a folder that is new, empty or of learn");
        }
      }
    }
    return Optional.of(to);
  }

  /** Where a path leads that need not be there yet. */
  private static Path real(Path path) throws IOException {
    Path whole = path.toAbsolutePath().normalize();
    Path there = whole;
    while (!Files.exists(there)) {
      there = Optional.ofNullable(there.getParent()).orElseThrow();
    }
    return there.toRealPath().resolve(there.relativize(whole)).normalize();
  }

  private ParameterException bad(String why) {
    return new ParameterException(spec.commandLine(), "--out " + out + " " + why);
  }
}
