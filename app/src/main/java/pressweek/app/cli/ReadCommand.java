package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.data.words.WordReader;
import pressweek.data.words.WordsAnswer;
import pressweek.reports.write.WordsJson;

/** Reads customers' words: ranked readings, what was understood, assumed, and is to be asked. */
@Command(
    name = "read",
    description = "Read a customer's words and give the item codes they can mean.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:the best reading of each is an item with nothing to ask",
      "1:something is to be asked",
      "2:the folder or its guide cannot be read"
    })
final class ReadCommand implements Callable<Integer> {
  /** How the answer is written. */
  enum As {
    TEXT,
    JSON
  }

  @Spec private CommandSpec spec;
  @Mixin private GuidedFolder folder;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "WORDS",
      description = "A description in quotes; - for one a line from standard input.")
  private List<String> words;

  @Option(
      names = "--as",
      defaultValue = "text",
      description = "text or json (an object a line). Default: ${DEFAULT-VALUE}.")
  private As as;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Optional<GuidedFolder.Guided> guided = folder.read(spec.commandLine().getErr());
    if (guided.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    WordReader reader = new WordReader(guided.get().explainer().guide().orElseThrow());
    boolean allComplete = true;
    for (String text : Texts.of(words, System.in)) {
      WordsAnswer answer = reader.read(text);
      if (as == As.JSON) {
        out.println(WordsJson.line(answer));
      } else {
        WordsPrinter.print(answer, out);
      }
      allComplete &= answer.readings().get(0).complete();
    }
    out.flush();
    return allComplete ? ExitCode.DONE : ExitCode.UNPLACED;
  }
}
