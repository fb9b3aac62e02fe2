package pressweek.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.data.files.Folder;
import pressweek.data.guide.Encoded;
import pressweek.data.guide.Specials;

/** Says the next free special of an item, which then needs its record in bom.csv. */
@Command(
    name = "special",
    description = "Say the next free special code of an item.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:there is one",
      "1:the code cannot be read, or no mark is free",
      "2:the folder or its guide cannot be read"
    })
final class SpecialCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private GuidedFolder folder;

  @Parameters(index = "1", paramLabel = "CODE", description = "The item it is based on.")
  private String code;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Optional<GuidedFolder.Guided> guided = folder.read(spec.commandLine().getErr());
    if (guided.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Specials specials = new Specials(guided.get().explainer().guide().orElseThrow());
    Encoded next = specials.next(code, inUse(guided.get().folder()));
    if (!next.good()) {
      next.faults().forEach(fault -> Paragraph.of("", fault).forEach(out::println));
      out.flush();
      return ExitCode.UNPLACED;
    }
    out.println(next.code());
    out.println(
        "  Before it can be planned, bom.csv needs its record: what it is made of and what");
    out.println("  makes it special. Nothing is assumed of a special.");
    out.flush();
    return ExitCode.DONE;
  }

  /** The items that the plant's files name. */
  private static List<String> inUse(Folder folder) {
    List<String> codes = new ArrayList<>();
    folder.materials().bom().forEach(row -> codes.add(row.item()));
    folder.demand().orders().forEach(row -> codes.add(row.item()));
    folder.demand().faulty().forEach(row -> codes.add(row.item()));
    folder.demand().stock().forEach(row -> codes.add(row.item()));
    folder.demand().customerParts().forEach(row -> codes.add(row.item()));
    folder.floor().molds().forEach(row -> codes.addAll(row.use().makes()));
    return codes;
  }
}
