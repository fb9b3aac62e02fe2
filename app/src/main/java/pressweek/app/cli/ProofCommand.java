package pressweek.app.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import pressweek.data.guide.Guide;
import pressweek.data.proof.Finding;
import pressweek.data.proof.Finding.Severity;
import pressweek.data.proof.GuideProof;
import pressweek.data.proof.Proof;

/** Proves a guide: finds codes that mean two things or nothing, and symbols that lead nowhere. */
@Command(
    name = "proof",
    description =
        "Prove the guide: ambiguous codes, symbols and rules that do nothing, symbols without a"
            + " mold, insert, resin or colour.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:nothing found, or only notes",
      "1:findings",
      "2:the folder or its guide cannot be read"
    })
final class ProofCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private GuidedFolder folder;

  @Option(names = "--json", description = "Print the findings as JSON.")
  private boolean json;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of the random codes (default: ${DEFAULT-VALUE}).")
  private long seed = GuideProof.SEED;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Optional<GuidedFolder.Guided> read = folder.read(err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Guide guide = read.get().explainer().guide().orElseThrow();
    Proof proof = GuideProof.of(guide, read.get().folder(), seed);
    if (json) {
      out.println(json(proof));
    } else {
      proof.findings().forEach(f -> Paragraph.of("", f.toString()).forEach(out::println));
      out.println(counts(proof) + " " + proof.tried());
    }
    out.flush();
    return proof.clean() ? ExitCode.DONE : ExitCode.UNPLACED;
  }

  private static String counts(Proof proof) {
    if (proof.findings().isEmpty()) {
      return "Nothing found.";
    }
    return "%s, %s, %s."
        .formatted(
            Counts.of((int) proof.count(Severity.ERROR), "error"),
            Counts.of((int) proof.count(Severity.WARNING), "warning"),
            Counts.of((int) proof.count(Severity.NOTE), "note"));
  }

  private static String json(Proof proof) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
      out.setPrettyPrinter(new DefaultPrettyPrinter());
      out.writeStartObject();
      out.writeNumberField("codes_written", proof.written());
      out.writeNumberField("seed", proof.seed());
      out.writeNumberField("left_open", proof.open());
      out.writeArrayFieldStart("findings");
      for (Finding finding : proof.findings()) {
        out.writeStartObject();
        out.writeStringField("file", finding.file());
        out.writeNumberField("line", finding.line());
        out.writeStringField("severity", finding.severity().word());
        out.writeStringField("message", finding.message());
        out.writeEndObject();
      }
      out.writeEndArray();
      out.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}
