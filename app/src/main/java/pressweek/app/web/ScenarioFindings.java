package pressweek.app.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.List;
import pressweek.app.desk.Shelved;
import pressweek.data.files.InputError;

/** What is wrong with a scenario, each finding with its line. */
final class ScenarioFindings {
  private static final int LONGEST_LINE = 2_000;

  private ScenarioFindings() {}

  static ArrayNode of(Shelved one) {
    List<String> lines = one.text().lines().toList();
    ArrayNode all = Asked.JSON.createArrayNode();
    for (InputError finding : one.findings()) {
      boolean there = finding.line() >= 1 && finding.line() <= lines.size();
      String line = there ? lines.get(finding.line() - 1).strip() : "";
      all.addObject()
          .put("file", finding.file())
          .put("line", finding.line())
          .put("column", finding.column())
          .put("message", finding.message())
          .put("severity", finding.severity().name())
          .put("text", line.substring(0, Math.min(line.length(), LONGEST_LINE)));
    }
    return all;
  }
}
