package pressweek.app.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.data.files.Folder;
import pressweek.data.week.RunExplainer;
import pressweek.data.week.RunExplainer.Answer;
import pressweek.data.week.RunExplainer.Asked;

/** Shows the working of a run: every figure with its formula, numbers and what it rests on. */
@Command(
    name = "explain",
    description = {
      "Show the working of a run like a handbook example, for example",
      "  pressweek explain FOLDER mold=M-LV90-1 press=V6 item=LV90/M10-B/PP-SGR/A2",
      "It says what is recorded, what is an estimate and which of them counts."
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:the working is shown",
      "2:the folder cannot be read, or it has no such mold, press or item"
    })
final class ExplainCommand implements Callable<Integer> {
  private static final String MOLD = "mold";
  private static final String PRESS = "press";
  private static final String ITEM = "item";
  private static final String RESIN = "resin";
  private static final String COLOUR = "colour";
  private static final String QUANTITY = "quantity";
  private static final List<String> NAMES = List.of(MOLD, PRESS, ITEM, QUANTITY, RESIN, COLOUR);
  private static final int MOST_PIECES = 10_000_000;
  private static final String USUAL = "1000";

  @Spec private CommandSpec spec;
  @Mixin private FolderArgument folder;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "NAME=VALUE",
      description =
          "mold, press and item; also quantity (default "
              + USUAL
              + "), and resin and colour where the code does not say them.")
  private List<String> texts;

  @Override
  public Integer call() {
    Asked asked = asked();
    PrintWriter err = spec.commandLine().getErr();
    Optional<Folder> read = folder.read(err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    int errors = read.get().errors().size();
    if (errors > 0) {
      err.println("errors in the folder: " + errors + "; see pressweek check");
    }
    Answer answer = new RunExplainer(read.get()).explain(asked);
    if (answer instanceof Answer.Worked worked) {
      PrintWriter out = spec.commandLine().getOut();
      new WorkingPrinter(out).print(worked.working());
      out.flush();
      return ExitCode.DONE;
    }
    for (String message : ((Answer.Refused) answer).messages()) {
      Paragraph.of("", message).forEach(err::println);
    }
    return ExitCode.BAD_INPUT;
  }

  private Asked asked() {
    Map<String, String> values = new LinkedHashMap<>();
    for (String text : texts) {
      int equals = text.indexOf('=');
      String name = equals < 0 ? text : text.substring(0, equals).strip();
      if (equals < 0 || !NAMES.contains(name)) {
        throw wrong("\"" + text + "\" is not known; expected " + String.join("=, ", NAMES) + "=");
      }
      if (values.put(name, text.substring(equals + 1).strip()) != null) {
        throw wrong(name + " is given twice; expected it once");
      }
    }
    for (String name : List.of(MOLD, PRESS, ITEM)) {
      if (values.getOrDefault(name, "").isEmpty()) {
        throw wrong(name + "= is missing; expected mold=, press= and item=");
      }
    }
    return new Asked(
        values.getOrDefault(MOLD, ""),
        values.getOrDefault(PRESS, ""),
        values.getOrDefault(ITEM, ""),
        values.getOrDefault(RESIN, ""),
        values.getOrDefault(COLOUR, ""),
        pieces(values.getOrDefault(QUANTITY, USUAL)));
  }

  private int pieces(String text) {
    int pieces = text.matches("\\d{1,8}") ? Integer.parseInt(text) : 0;
    if (pieces < 1 || pieces > MOST_PIECES) {
      throw wrong("quantity \"" + text + "\"; expected a whole number from 1 to 10,000,000");
    }
    return pieces;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
