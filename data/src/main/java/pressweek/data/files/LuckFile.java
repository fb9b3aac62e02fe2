package pressweek.data.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.InputError.Severity;
import pressweek.data.problem.Uncertainty;
import pressweek.data.problem.Uncertainty.Breakdown;

/**
 * What a replay depends on beside its plan, as text, by the keys of {@code uncertainty} in {@code
 * plant.json}. What is only asked of replays, as how sure a line ought to be, is no part of it. The
 * same figures give the same text.
 */
public final class LuckFile {
  private static final JsonFactory FACTORY = new JsonFactory();

  /** As many as {@code plant.json} is read with. */
  private static final int DECIMALS = 12;

  /**
   * What was read.
   *
   * @param luck the figures; empty when there is an error
   * @param errors what was wrong
   */
  public record Reading(Optional<Uncertainty> luck, List<InputError> errors) {
    public Reading {
      errors = List.copyOf(errors);
    }
  }

  private LuckFile() {}

  /** The text of an uncertainty. */
  public static String text(Uncertainty luck) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.writeStartObject();
      number(json, "cycle_pct", luck.cycle().meanPct());
      number(json, "cycle_spread_pct", luck.cycle().spreadPct());
      number(json, "scrap_spread_pct", luck.scrapSpreadPct());
      number(json, "change_pct", luck.change().meanPct());
      number(json, "change_spread_pct", luck.change().spreadPct());
      breakdown(json, luck.breakdown());
      json.writeArrayFieldStart("presses");
      for (Uncertainty.PressBreakdown press : luck.presses()) {
        json.writeStartObject();
        json.writeStringField("press", press.press());
        breakdown(json, press.breakdown());
        json.writeEndObject();
      }
      json.writeEndArray();
      number(json, "receipt_late_pct", luck.receipts().latePct());
      number(json, "receipt_late_days", luck.receipts().lateDays());
      json.writeNumberField("after_horizon_days", luck.effort().daysOn());
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory", e);
    }
    return text.toString();
  }

  private static void breakdown(JsonGenerator json, Breakdown of) throws IOException {
    number(json, "breakdown_every_h", of.everyH());
    number(json, "repair_min", of.repairMin());
    number(json, "repair_spread_pct", of.repairSpreadPct());
  }

  private static void number(JsonGenerator json, String key, double value) throws IOException {
    BigDecimal exact = new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_UP);
    json.writeFieldName(key);
    json.writeNumber(exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString());
  }

  /**
   * Reads such a text; what it does not say has its default.
   *
   * @param name what errors call it
   * @param text the text
   */
  public static Reading read(String name, String text) {
    try {
      JsonReading json = JsonReader.read(name, new StringReader(text));
      Findings findings = new Findings();
      json.findings().forEach(findings::add);
      Optional<Uncertainty> luck = json.object().map(given -> luck(name, given, findings));
      List<InputError> errors =
          findings.list().stream().filter(e -> e.severity() == Severity.ERROR).toList();
      return new Reading(errors.isEmpty() ? luck : Optional.empty(), errors);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory", e);
    }
  }

  private static Uncertainty luck(String name, JsonTree.Obj given, Findings findings) {
    JsonFields.Notes notes = new JsonFields.Notes(name, findings, new HashMap<>());
    JsonTree defaults = PlantReader.defaults().field("uncertainty").orElseThrow();
    return UncertaintyReader.read(new JsonFields(notes, "", given, (JsonTree.Obj) defaults));
  }
}
