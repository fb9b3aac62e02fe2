package pressweek.data.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.InputError.Severity;
import pressweek.data.problem.Problem;

/**
 * A problem as text, as it stands in a {@code plan.json}: all that a planner needs, without the
 * folder that it came from. The same problem gives the same text.
 */
public final class ProblemFile {
  private static final JsonFactory FACTORY = new JsonFactory();

  /**
   * What was read.
   *
   * @param problem the problem; empty when there is an error
   * @param errors what was wrong
   */
  public record Reading(Optional<Problem> problem, List<InputError> errors) {
    public Reading {
      errors = List.copyOf(errors);
    }
  }

  private ProblemFile() {}

  /** The text of a problem. */
  public static String text(Problem problem) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.writeStartObject();
      json.writeStringField("schema", PlanFile.SCHEMA);
      new PlanWriter(json, problem.plant().hours().zone()).components(problem);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory", e);
    }
    return text.toString();
  }

  /**
   * Reads the text of a problem.
   *
   * @param name what errors call it
   * @param text the text
   */
  public static Reading read(String name, String text) {
    try {
      JsonReading json = JsonReader.read(name, new StringReader(text));
      List<InputError> errors = new ArrayList<>(json.findings());
      errors.removeIf(e -> e.severity() != Severity.ERROR);
      return errors.isEmpty()
          ? new Reading(Optional.of(problem(json.tree().orElseThrow())), errors)
          : new Reading(Optional.empty(), errors);
    } catch (PlanReader.Wrong e) {
      String message = String.valueOf(e.getMessage());
      return new Reading(
          Optional.empty(), List.of(new InputError(Severity.ERROR, name, e.line(), "", message)));
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory", e);
    }
  }

  private static Problem problem(JsonTree tree) throws PlanReader.Wrong {
    JsonTree.Obj object = PlanFile.ofSchema(tree, "a problem");
    return PlanReader.record(Problem.class, object, "");
  }
}
