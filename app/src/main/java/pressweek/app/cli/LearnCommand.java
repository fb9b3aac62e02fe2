package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import pressweek.data.files.ActualRow;
import pressweek.data.files.AtomicFile;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.learning.Learning;
import pressweek.reports.write.StandardsCsv;

/** {@code pressweek learn}: what past runs say of the plant's standards. */
@Command(
    name = "learn",
    description = {
      "Compares what runs took (actuals.csv) with the plant's standards, recorded changes and efficiency, and proposes others by robust statistics, each with its runs, spread and interval. The folder itself is never changed.",
      "For example: pressweek learn FOLDER --out proposed/standards.csv"
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:the runs were compared",
      "2:the folder or its actuals.csv cannot be read, or FILE is the folder's own"
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
      paramLabel = "FILE",
      defaultValue = "",
      description = "where to write standards.csv with the proposals in it; not the folder's own")
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
    Optional<List<ActualRow>> rows = ActualsOption.read(actuals, read.get(), err);
    if (rows.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Learning.Learned learned = Learning.from(read.get(), rows.get());
    PrintWriter text = spec.commandLine().getOut();
    text.print(
        LearnPrinter.text(
            learned.proposals(), rows.get().size(), read.get().plant().learnFromRuns()));
    if (to.isPresent()) {
      String csv = StandardsCsv.csv(learned.standards());
      AtomicFile.write(to.get(), csv.getBytes(StandardCharsets.UTF_8));
      text.println();
      text.println("Written");
      text.println("  " + to.get());
    }
    text.flush();
    return ExitCode.DONE;
  }

  /** Proposals are written beside the folder's own standards, never over them. */
  private Optional<Path> target(Folder read) throws IOException {
    if (out.isEmpty()) {
      return Optional.empty();
    }
    Path to = Path.of(out);
    if (Files.isDirectory(to)) {
      throw new ParameterException(
          spec.commandLine(), "--out " + out + " is a folder; expected the name of a file");
    }
    Path own = read.path().resolve(InputFile.STANDARDS.fileName());
    boolean same =
        Files.exists(to) && Files.exists(own)
            ? Files.isSameFile(to, own)
            : to.toAbsolutePath().normalize().equals(own.toAbsolutePath().normalize());
    if (same) {
      throw new ParameterException(
          spec.commandLine(),
          "--out " + out + " is the folder's own; expected another file, to be looked at first");
    }
    return Optional.of(to);
  }
}
