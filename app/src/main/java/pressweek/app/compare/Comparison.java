package pressweek.app.compare;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import pressweek.reports.compare.SideBySide;
import pressweek.reports.compare.Tried;
import pressweek.reports.handover.Handover;
import pressweek.reports.write.CompareFiles;
import pressweek.reports.write.Edition;
import pressweek.reports.write.PlanFiles;

/**
 * A comparison that was made, as it is kept until the next one: an archive of {@code about.json}
 * and its papers.
 *
 * @param about sentences, figures, and what it was made of
 * @param papers content of each paper by its path: the pages, the workbook, the list, and the page
 *     of each plan that is shown
 */
public record Comparison(JsonNode about, Map<String, byte[]> papers) {
  private static final String ABOUT = "about.json";
  private static final ObjectMapper JSON = new ObjectMapper();

  public Comparison {
    papers = Collections.unmodifiableMap(new LinkedHashMap<>(papers));
  }

  /** A comparison with its papers. */
  public static Comparison of(SideBySide all, ComparisonSource source) {
    Map<String, byte[]> papers = new LinkedHashMap<>(CompareFiles.of(all));
    for (Tried tried : all.shown()) {
      Edition edition =
          new Edition(tried.best().orElseThrow().book(), Handover.none(), List.of(), all.madeMin());
      papers.put(tried.folder() + "/index.html", PlanFiles.page(edition));
    }
    return new Comparison(ComparisonJson.of(all, source), papers);
  }

  /** What it was made of. */
  public ComparisonSource source() {
    return ComparisonJson.source(about);
  }

  /** All of it as one archive. */
  public byte[] archive() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      put(zip, ABOUT, about.toString().getBytes(StandardCharsets.UTF_8));
      for (Map.Entry<String, byte[]> paper : papers.entrySet()) {
        put(zip, paper.getKey(), paper.getValue());
      }
    }
    return bytes.toByteArray();
  }

  private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(0);
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }

  /**
   * The comparison of an archive.
   *
   * @throws IOException when it is none
   */
  public static Comparison read(byte[] archive) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
        parts.put(e.getName(), zip.readAllBytes());
      }
    }
    byte[] about = parts.remove(ABOUT);
    JsonNode tree = JSON.readTree(about == null ? new byte[0] : about);
    if (!tree.isObject()) {
      throw new IOException("the archive holds no comparison");
    }
    return new Comparison(tree, parts);
  }
}
