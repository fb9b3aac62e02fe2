package pressweek.app.compare;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import pressweek.reports.compare.Certainty;
import pressweek.reports.compare.Figure;
import pressweek.reports.compare.FigureCells;
import pressweek.reports.compare.ScenarioSentence;
import pressweek.reports.compare.SideBySide;
import pressweek.reports.compare.Tried;

/** A comparison as pages read it: every sentence and cell in words. */
final class ComparisonJson {
  private ComparisonJson() {}

  static ObjectNode of(SideBySide all, ComparisonSource source) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("by", source.by()).put("at", all.madeMin()).put("stopped", all.stopped());
    json.put("effort", all.effort()).put("method", Certainty.method(all.seeds()));
    json.put("base", ScenarioSentence.base(all));
    ArrayNode sentences = json.putArray("sentences");
    for (Tried tried : all.scenarios()) {
      ObjectNode one = sentences.addObject().put("sentence", ScenarioSentence.of(all, tried));
      one.put("words", tried.words());
      tried.notes().forEach(one.putArray("notes")::add);
    }
    ArrayNode broken = json.putArray("broken");
    all.all().stream()
        .filter(t -> t.broken() > 0)
        .forEach(t -> broken.addObject().put("name", t.name()).put("plans", t.broken()));
    json.set("table", table(all));
    json.set("source", source(source));
    return json;
  }

  private static ObjectNode table(SideBySide all) {
    FigureCells cells = new FigureCells(all);
    ObjectNode table = JsonNodeFactory.instance.objectNode();
    ArrayNode sides = table.putArray("sides");
    all.shown().forEach(t -> sides.add(t.name()));
    ArrayNode groups = table.putArray("groups");
    List<Figure> figures = all.shown().isEmpty() ? List.of() : all.figures();
    for (String group : figures.stream().map(Figure::group).distinct().toList()) {
      ArrayNode rows = groups.addObject().put("name", group).putArray("rows");
      for (Figure figure : figures.stream().filter(f -> f.group().equals(group)).toList()) {
        ObjectNode row = rows.addObject().put("figure", figure.key());
        row.put("words", cells.heading(figure));
        ArrayNode of = row.putArray("cells");
        for (Tried tried : all.shown()) {
          of.addObject()
              .put("value", cells.range(tried, figure))
              .put("difference", cells.difference(tried, figure));
        }
      }
    }
    return table;
  }

  private static ObjectNode source(ComparisonSource source) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ObjectNode inputs = json.putObject("inputs");
    source.inputs().forEach(inputs::put);
    ArrayNode scenarios = json.putArray("scenarios");
    for (ComparisonSource.Scenario one : source.scenarios()) {
      scenarios.addObject().put("id", one.id()).put("name", one.name()).put("sha256", one.sha256());
    }
    return json;
  }

  /** What a comparison was made of, read back. */
  static ComparisonSource source(JsonNode about) {
    JsonNode source = about.path("source");
    SortedMap<String, String> inputs = new TreeMap<>();
    source
        .path("inputs")
        .fields()
        .forEachRemaining(f -> inputs.put(f.getKey(), f.getValue().asText()));
    List<ComparisonSource.Scenario> scenarios = new ArrayList<>();
    for (JsonNode one : source.path("scenarios")) {
      scenarios.add(
          new ComparisonSource.Scenario(
              one.path("id").asText(), one.path("name").asText(), one.path("sha256").asText()));
    }
    return new ComparisonSource(about.path("by").asText(), inputs, scenarios);
  }
}
