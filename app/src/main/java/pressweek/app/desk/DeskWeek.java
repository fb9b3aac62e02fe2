package pressweek.app.desk;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import pressweek.app.store.row.Body;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Plan;

/**
 * The week as it lies on the desk: a plan, and what was set by hand. It is kept as an archive of
 * {@code plan.json} and three lists, a line a row, the reason or the pieces after a tab.
 *
 * @param plan the plan; promised and held lines are promises of its problem
 * @param marks what was set by hand
 */
public record DeskWeek(Plan plan, Marks marks) {
  private static final String PLAN = "plan.json";
  private static final String HELD = "held";
  private static final String LEFT_OUT = "left-out";
  private static final String SPLIT = "split";

  /** The week as it is kept. */
  Body body() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      put(zip, PLAN, PlanFile.text(plan));
      put(zip, HELD, String.join("\n", marks.held()));
      StringBuilder out = new StringBuilder();
      marks.leftOut().forEach((line, why) -> out.append(line + "\t" + oneLine(why) + "\n"));
      put(zip, LEFT_OUT, out.toString());
      StringBuilder parts = new StringBuilder();
      marks.splits().forEach((line, pieces) -> parts.append(line + "\t" + pieces + "\n"));
      put(zip, SPLIT, parts.toString());
    } catch (IOException e) {
      throw new UncheckedIOException("an archive in memory", e);
    }
    return Body.of(bytes.toByteArray());
  }

  private static String oneLine(String text) {
    return text.replaceAll("[\\t\\r\\n]+", " ");
  }

  private static void put(ZipOutputStream zip, String name, String text) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(0);
    zip.putNextEntry(entry);
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  /**
   * The week that was kept.
   *
   * @throws IllegalStateException when it is none
   */
  static DeskWeek of(Body body) {
    Map<String, String> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(body.bytes()))) {
      for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
        parts.put(e.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("an archive in memory", e);
    }
    PlanFile.Reading reading = PlanFile.read(PLAN, parts.getOrDefault(PLAN, ""));
    Plan plan =
        reading
            .plan()
            .orElseThrow(
                () -> new IllegalStateException("the week that was kept: " + reading.errors()));
    Set<String> held = new TreeSet<>();
    parts.getOrDefault(HELD, "").lines().filter(l -> !l.isBlank()).forEach(held::add);
    Map<String, Integer> splits = new LinkedHashMap<>();
    rows(parts, SPLIT).forEach((line, pieces) -> splits.put(line, Integer.valueOf(pieces)));
    return new DeskWeek(plan, new Marks(held, rows(parts, LEFT_OUT), splits));
  }

  private static Map<String, String> rows(Map<String, String> parts, String name) {
    Map<String, String> rows = new LinkedHashMap<>();
    parts
        .getOrDefault(name, "")
        .lines()
        .map(l -> l.split("\t", 2))
        .filter(l -> l.length == 2)
        .forEach(l -> rows.put(l[0], l[1]));
    return rows;
  }
}
