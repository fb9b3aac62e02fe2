package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.data.guide.Guide;
import pressweek.data.week.Explained;
import pressweek.reports.write.CodeJson;
import pressweek.reports.write.CodeTable;

/**
 * Says what item codes mean: part by part, attribute by attribute, and which inserts, molds and
 * presses they lead to.
 */
@Command(
    name = "decode",
    description = "Say what item codes mean and what they lead to.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:every code leads to an item that can be made",
      "1:a code cannot be read, or nothing can make it",
      "2:the folder or its guide cannot be read"
    })
final class DecodeCommand implements Callable<Integer> {
  /** How the answer is written. */
  enum As {
    TEXT,
    JSON,
    CSV
  }

  @Spec private CommandSpec spec;
  @Mixin private GuidedFolder folder;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "CODE",
      description = "Item codes; - for one a line from standard input.")
  private List<String> codes;

  @Option(
      names = "--as",
      defaultValue = "text",
      description = "text, json (an object a line) or csv. Default: ${DEFAULT-VALUE}.")
  private As as;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Optional<GuidedFolder.Guided> guided = folder.read(spec.commandLine().getErr());
    if (guided.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    boolean allGood = true;
    List<Explained> table = new ArrayList<>();
    CodePrinter printer = new CodePrinter(out);
    for (String code : Texts.of(codes, System.in)) {
      Explained explained = guided.get().explainer().explain(code);
      allGood &= explained.good();
      switch (as) {
        case TEXT -> printer.print(explained);
        case JSON -> out.println(CodeJson.line(explained));
        case CSV -> table.add(explained);
      }
    }
    if (as == As.CSV) {
      Guide guide = guided.get().explainer().guide().orElseThrow();
      out.print(CodeTable.csv(table, guide.sheet().attributes()));
    }
    out.flush();
    return allGood ? ExitCode.DONE : ExitCode.UNPLACED;
  }
}
