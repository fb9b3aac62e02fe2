package pressweek.app.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.data.files.Headings;
import pressweek.data.files.InputError;
import pressweek.data.files.InputFile;

/**
 * {@code pressweek headings}: says which column each heading of a plant's own file is, and keeps it
 * in the folder.
 */
@Command(
    name = "headings",
    description = {
      "Proposes a column for each heading of a file, asks about the doubtful ones, and keeps the answers in headings.json of the folder.",
      "Exit: 0 kept, 2 bad input, no answer, or a column that no heading stands for."
    },
    mixinStandardHelpOptions = true)
final class HeadingsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the plant's folder")
  private Path folder;

  @Parameters(
      index = "1",
      paramLabel = "FILE",
      description =
          "a file of the folder, or elsewhere a file of the same name, for example orders.csv")
  private String name;

  @Option(names = "--yes", description = "take all proposals without asking")
  private boolean yes;

  @Override
  public Integer call() {
    try {
      return headings();
    } catch (IOException e) {
      return fail(
          e.getMessage()
              + ": cannot be read or written; expected a folder and files that can ("
              + e.getClass().getSimpleName()
              + ")");
    }
  }

  private int headings() throws IOException {
    Path file = file();
    if (!Files.isDirectory(folder)) {
      return fail(folder + ": no folder is there; expected the plant's folder");
    }
    if (!Files.isRegularFile(file)) {
      return fail(file + ": no file is there; expected one such as orders.csv");
    }
    Headings.Proposals proposals = Headings.propose(folder, file);
    proposals.findings().forEach(f -> err().println(f));
    boolean torn =
        proposals.findings().stream().anyMatch(f -> f.severity() == InputError.Severity.ERROR);
    if (torn || proposals.file().isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    return map(proposals.file().get(), proposals.proposals());
  }

  private Path file() {
    Path inFolder = folder.resolve(name);
    return Files.exists(inFolder) ? inFolder : Path.of(name);
  }

  private int map(InputFile file, List<Headings.Proposal> proposals) throws IOException {
    HeadingQuestions questions = new HeadingQuestions(file, new BufferedReader(input()), err());
    Optional<Map<String, String>> mapping =
        yes ? Optional.of(questions.acceptAll(proposals)) : questions.ask(proposals);
    if (mapping.isEmpty()) {
      return fail(
          file.fileName()
              + ": the input ended before every question was answered; nothing was kept; expected answers at the terminal, "
              + "--yes to take all proposals, or a headings.json written by hand");
    }
    List<InputError> errors = Headings.keep(folder, file, mapping.get());
    errors.forEach(e -> err().println(e));
    if (!errors.isEmpty()) {
      return fail(
          file.fileName() + ": nothing was kept; expected a headings.json that can be read");
    }
    mapping.get().forEach(this::show);
    return unanswered(file, proposals, mapping.get());
  }

  private void show(String heading, String column) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(heading + " -> " + (column.isEmpty() ? "(left out)" : column));
    out.flush();
  }

  /** What is kept and still does not make the file whole. */
  private int unanswered(
      InputFile file, List<Headings.Proposal> proposals, Map<String, String> mapping) {
    int code = 0;
    for (Headings.Proposal proposal : proposals) {
      if (!mapping.containsKey(proposal.heading())) {
        String choices = String.join(", ", proposal.choices());
        code =
            fail(
                file.fileName()
                    + ": \""
                    + proposal.heading()
                    + "\": "
                    + proposal.because()
                    + "; expected an answer, one of "
                    + choices);
      }
    }
    List<String> missing = Headings.missing(file, List.copyOf(mapping.values()));
    if (code == 0 && !missing.isEmpty()) {
      code =
          fail(
              file.fileName()
                  + ": no heading stands for "
                  + String.join(", ", missing)
                  + "; expected one for each");
    }
    return code;
  }

  private static InputStreamReader input() {
    return new InputStreamReader(System.in, Charset.defaultCharset());
  }

  private PrintWriter err() {
    return spec.commandLine().getErr();
  }

  private int fail(String message) {
    err().println(message);
    err().flush();
    return ExitCode.BAD_INPUT;
  }
}
