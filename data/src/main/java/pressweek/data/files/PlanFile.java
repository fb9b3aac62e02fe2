package pressweek.data.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.table.FileScan;
import pressweek.data.plan.Plan;

/**
 * A plan as a file, {@code plan.json}: the schema, then the plan with the problem that it plans.
 * Points in time are ISO 8601 with the plant's offset, all other times minutes, money thousandths
 * of a cent. The same plan gives the same bytes.
 */
public final class PlanFile {
  /** The schema that is written. */
  public static final String SCHEMA = "pressweek-plan/1";

  private static final JsonFactory FACTORY = new JsonFactory();

  /**
   * What was read.
   *
   * @param plan the plan; empty when there is an error
   * @param errors what was wrong
   */
  public record Reading(Optional<Plan> plan, List<InputError> errors) {
    public Reading {
      errors = List.copyOf(errors);
    }
  }

  private PlanFile() {}

  /** Writes a plan; a reader finds the file as it was or as it is, never half of it. */
  public static void write(Plan plan, Path file) throws IOException {
    AtomicFile.write(file, out -> write(plan, out));
  }

  /** The text of the file. */
  public static String text(Plan plan) {
    StringWriter text = new StringWriter();
    try {
      write(plan, text);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory", e);
    }
    return text.toString();
  }

  private static void write(Plan plan, Writer out) throws IOException {
    DefaultIndenter indent = new DefaultIndenter(" ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withArrayIndenter(indent).withObjectIndenter(indent);
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
      json.setPrettyPrinter(printer);
      json.writeStartObject();
      json.writeStringField("schema", SCHEMA);
      new PlanWriter(json, plan.problem().plant().hours().zone()).components(plan);
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }

  /**
   * Reads a plan.
   *
   * @throws IOException when the file cannot be read at all; whatever it holds is an error in the
   *     result
   */
  public static Reading read(Path file) throws IOException {
    String name = String.valueOf(file.getFileName());
    return reading(name, JsonReader.read(file, FileScan.of(file)));
  }

  /**
   * Reads the text of a plan.
   *
   * @param name what errors call it
   * @param text the text
   */
  public static Reading read(String name, String text) {
    try {
      return reading(name, JsonReader.read(name, new StringReader(text)));
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory", e);
    }
  }

  private static Reading reading(String name, JsonReading json) {
    List<InputError> errors = new ArrayList<>(json.findings());
    errors.removeIf(e -> e.severity() != Severity.ERROR);
    if (!errors.isEmpty()) {
      return new Reading(Optional.empty(), errors);
    }
    try {
      return new Reading(Optional.of(plan(json.tree().orElseThrow())), errors);
    } catch (PlanReader.Wrong e) {
      String message = String.valueOf(e.getMessage());
      return new Reading(
          Optional.empty(), List.of(new InputError(Severity.ERROR, name, e.line(), "", message)));
    }
  }

  private static Plan plan(JsonTree tree) throws PlanReader.Wrong {
    return PlanReader.record(Plan.class, ofSchema(tree, "a plan"), "");
  }

  /** The object of a file that has our schema. */
  static JsonTree.Obj ofSchema(JsonTree tree, String what) throws PlanReader.Wrong {
    if (!(tree instanceof JsonTree.Obj object)) {
      throw new PlanReader.Wrong(tree.line(), "the file is " + tree.kind() + "; expected " + what);
    }
    Optional<JsonTree> schema = object.field("schema");
    if (schema.isEmpty()) {
      throw new PlanReader.Wrong(
          object.line(), "key \"schema\" missing; expected \"" + SCHEMA + "\"");
    }
    if (!(schema.get() instanceof JsonTree.Text text) || !text.value().equals(SCHEMA)) {
      String expected = "; expected \"" + SCHEMA + "\", as this version of Pressweek reads it";
      throw new PlanReader.Wrong(
          schema.get().line(), "schema is " + schema.get().kind() + expected);
    }
    return object;
  }
}
