package pressweek.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.problem.Attribute;
import pressweek.data.week.Explained;
import pressweek.data.week.Explainer;

/**
 * Says what item codes mean: attribute by attribute, and which inserts, molds and presses they lead
 * to.
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
  private static final int SHOWN = 8;

  @Spec private CommandSpec spec;
  @Mixin private FolderArgument folder;

  @Parameters(index = "1..*", arity = "1..*", paramLabel = "CODE", description = "Item codes.")
  private List<String> codes;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Optional<Folder> read = folder.read(err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Explainer explainer = new Explainer(read.get());
    if (!explainer.guided()) {
      boolean none = read.get().guide().isEmpty();
      read.get().errors().stream()
          .filter(error -> error.file().equals(InputFile.GUIDE.fileName()))
          .forEach(err::println);
      explainer.findings().forEach(err::println);
      err.println(
          none
              ? "guide.json: not there or not JSON; without it an item code is only a name"
              : "guide.json cannot be used");
      return ExitCode.BAD_INPUT;
    }
    explainer.findings().forEach(err::println);
    int errors = read.get().errors().size();
    if (errors > 0) {
      err.println("errors in the folder: " + errors + "; see pressweek check");
    }
    boolean allGood = true;
    for (String code : codes) {
      Explained explained = explainer.explain(code);
      print(explained, out);
      allGood &= explained.trouble().isEmpty();
    }
    out.flush();
    return allGood ? ExitCode.DONE : ExitCode.UNPLACED;
  }

  private static void print(Explained explained, PrintWriter out) {
    String family = explained.family().isEmpty() ? "" : "  (" + explained.family() + ")";
    out.println(explained.code() + family);
    int nameWidth = width(explained.attributes().stream().map(Attribute::name).toList());
    int valueWidth = width(explained.attributes().stream().map(Attribute::value).toList());
    for (Attribute attribute : explained.attributes()) {
      String head =
          "  "
              + pad(attribute.name(), nameWidth)
              + "  "
              + pad(attribute.value(), valueWidth)
              + "  ";
      Paragraph.of(head, origin(attribute) + ": " + attribute.because()).forEach(out::println);
    }
    for (Explained.Maker maker : explained.makers()) {
      String where =
          maker.presses().isEmpty()
              ? "no press: " + few(maker.objections())
              : "on " + few(maker.presses());
      Paragraph.of("  mold " + maker.mold() + "  ", where).forEach(out::println);
    }
    if (!explained.trouble().isEmpty()) {
      Paragraph.of("  ", explained.trouble()).forEach(out::println);
      Paragraph.of("  cure: ", explained.cure()).forEach(out::println);
    }
  }

  private static int width(List<String> texts) {
    return Math.min(18, texts.stream().mapToInt(String::length).max().orElse(0));
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  private static String origin(Attribute attribute) {
    return attribute.origin().name().toLowerCase(Locale.ROOT);
  }

  private static String few(List<String> all) {
    int shown = Math.min(SHOWN, all.size());
    String more = all.size() > shown ? " and " + (all.size() - shown) + " more" : "";
    return String.join(", ", all.subList(0, shown)) + more;
  }
}
