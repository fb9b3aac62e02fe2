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
import pressweek.data.guide.Decoded;
import pressweek.data.guide.Draft;
import pressweek.data.guide.Guide;
import pressweek.data.guide.Objection;

/** Writes the code of what is known of an item, or a code in the guide's own spelling. */
@Command(
    name = "encode",
    description =
        "Write the code of what is known of an item, or codes in the guide's own spelling.",
    footer = {
      "For example:",
      "  pressweek encode FOLDER head=LV90 thread=M10 insert_kind=blind resin=PP"
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:there is a code",
      "1:something is open, or does not go together",
      "2:the folder or its guide cannot be read"
    })
final class EncodeCommand implements Callable<Integer> {
  private static final int MOST = 3;

  @Spec private CommandSpec spec;
  @Mixin private GuidedFolder folder;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "ATTRIBUTE=VALUE",
      description = "What is known of the item; an empty value is: it has none. Or codes.")
  private List<String> texts;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Optional<GuidedFolder.Guided> guided = folder.read(spec.commandLine().getErr());
    if (guided.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Guide guide = guided.get().explainer().guide().orElseThrow();
    boolean attributes = texts.stream().allMatch(text -> text.indexOf('=') > 0);
    if (!attributes && texts.stream().anyMatch(text -> text.indexOf('=') > 0)) {
      throw new ParameterException(
          spec.commandLine(), "codes and ATTRIBUTE=VALUE mixed; expected only one kind");
    }
    boolean done = attributes ? write(guide, out) : spell(guide, out);
    out.flush();
    return done ? ExitCode.DONE : ExitCode.UNPLACED;
  }

  private static boolean spell(Guide guide, String code, PrintWriter out) {
    Decoded decoded = guide.decode(code);
    if (!decoded.good()) {
      decoded.faults().forEach(out::println);
      return false;
    }
    out.println(guide.encoder().canonical(code));
    return true;
  }

  private boolean spell(Guide guide, PrintWriter out) {
    boolean all = true;
    for (String code : texts) {
      all &= spell(guide, code, out);
    }
    return all;
  }

  private boolean write(Guide guide, PrintWriter out) {
    Map<String, String> known = new LinkedHashMap<>();
    for (String text : texts) {
      int equals = text.indexOf('=');
      String name = text.substring(0, equals).strip();
      if (known.put(name, text.substring(equals + 1).strip()) != null) {
        throw new ParameterException(
            spec.commandLine(), "attribute \"" + name + "\" is given twice; expected it once");
      }
    }
    List<Draft> drafts = guide.encoder().drafts(known, MOST);
    if (drafts.isEmpty()) {
      for (Objection objection : guide.encoder().objections(known)) {
        Paragraph.of("", objection.sentence()).forEach(out::println);
      }
      return false;
    }
    Draft best = drafts.get(0);
    if (best.complete()) {
      out.println(best.code());
      return true;
    }
    out.println(best.code() + "  (" + best.family() + ")");
    for (Draft.Gap gap : best.gaps()) {
      String head = "  open: " + gap.field() + "  ";
      String choices = String.join(", ", gap.choices());
      Paragraph.of(head, choices + " (" + String.join(", ", gap.attributes()) + ")")
          .forEach(out::println);
    }
    return false;
  }
}
