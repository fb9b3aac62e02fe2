package pressweek.examples.pages;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import pressweek.app.store.StoreTrouble;
import pressweek.examples.PlantGenerator;
import pressweek.examples.PlantSize;
import pressweek.examples.ResultsFile;

/**
 * Measures the pages as people meet them, in a real browser and by many at once, and writes the
 * part <i>Pages</i> of {@code benchmarks/RESULTS.md}. Run it from the folder {@code examples};
 * {@code DEVELOPERS.md} has the command.
 */
public final class PagesSpeedRun {
  static final Path DEMO = Path.of("quillback-week");

  private static final System.Logger LOG = System.getLogger(PagesSpeedRun.class.getName());
  private static final Instant NOW = Instant.parse("2026-11-30T05:00:00Z");
  private static final PlantSize LARGE = new PlantSize(1_500, 60);
  private static final int OPENED = 10;
  private static final int DRAGS = 5;
  private static final int TRIALS = 100;

  private final List<String> lines = new ArrayList<>();

  private PagesSpeedRun() {}

  /** Runs all of it. */
  public static void main(String[] args) throws IOException, StoreTrouble, InterruptedException {
    Path work = Files.createTempDirectory("pages");
    try {
      PagesSpeedRun run = new PagesSpeedRun();
      run.lines.add(
          ResultsFile.machine() + " Written by `pressweek.examples.pages.PagesSpeedRun`.");
      run.wall(work);
      run.load(work);
      new ResultsFile(Path.of("benchmarks", "RESULTS.md")).replace("Pages", run.lines);
      run.lines.forEach(line -> LOG.log(System.Logger.Level.INFO, line));
    } finally {
      delete(work);
    }
  }

  private void wall(Path work) throws IOException, StoreTrouble, InterruptedException {
    PlantGenerator.write(work.resolve("large"), LARGE, 1);
    try (Served served = new Served(work.resolve("large"), work.resolve("large.db"), NOW, 1);
        WallSpeed wall = new WallSpeed(served.home())) {
      int runs = served.desk.standing().orElseThrow().week().plan().runs().size();
      say("");
      say(
          String.format(
              Locale.ROOT,
              "Week wall of a drawn plant, %d presses, %,d runs; %s without a head, 1280 x 800, server and browser on this machine.",
              LARGE.presses(),
              runs,
              wall.browser()));
      say("");
      say("| what | times | median, ms | 95 % within, ms | longest, ms |");
      say("|---|---|---|---|---|");
      List<Double> first = new ArrayList<>();
      List<Double> bars = new ArrayList<>();
      for (int i = 0; i <= OPENED; i++) {
        WallSpeed.Painted painted = wall.open();
        if (i > 0) {
          first.add(painted.firstMs());
          bars.add(painted.wallMs());
        }
      }
      row("first paint (W3C Paint Timing, first contentful)", first);
      row("bars of the wall painted", bars);
      row("frames while a run is dragged over the strips", frames(wall, 0.7));
      row("the same, the wall scrolling at its edges", frames(wall, 0.98));
      row("answer to a move, before it is put down", trials(served));
    }
  }

  private static List<Double> frames(WallSpeed wall, double reach) throws InterruptedException {
    List<Double> frames = new ArrayList<>();
    for (int i = 0; i < DRAGS; i++) {
      frames.addAll(wall.drag((i + 0.5) / DRAGS, reach));
    }
    return frames;
  }

  /** How long it takes to be told what a drawn move would do. */
  private static List<Double> trials(Served served) throws IOException {
    Loopback me = new Loopback(served.home());
    JsonNode week = me.get("/api/week");
    SplittableRandom random = new SplittableRandom(1);
    List<Double> millis = new ArrayList<>();
    while (millis.size() < TRIALS) {
      JsonNode run = week.path("runs").get(random.nextInt(week.path("runs").size()));
      JsonNode press = week.path("presses").get(random.nextInt(week.path("presses").size()));
      ObjectNode move = JsonNodeFactory.instance.objectNode();
      move.put("version", week.path("version").asLong()).put("line", run.path("line").asText());
      move.put("press", press.path("id").asText()).put("place", random.nextInt(20));
      long begun = System.nanoTime();
      JsonNode answer = me.post("/api/week/trial", move);
      double took = (System.nanoTime() - begun) / 1e6;
      if (answer.path("possible").asBoolean()) {
        millis.add(took);
      }
    }
    return millis;
  }

  private void load(Path work) throws IOException, StoreTrouble, InterruptedException {
    try (Served served = new Served(DEMO, work.resolve("demo.db"), NOW, 100)) {
      Load.Came came = Load.of(served.home(), 50, 5, Duration.ofSeconds(30));
      if (!came.faults().isEmpty()) {
        throw new IllegalStateException(came.faults().toString());
      }
      say("");
      say(
          "Demo week for 30 s, 50 readers, each of whom asks about once a second (the week, pulls, changes, crew, figures, a page, a script), and 5 editors, each of whom looks at the week and changes it about every two seconds:");
      say("");
      say("| what | times | median, ms | 95 % within, ms | longest, ms |");
      say("|---|---|---|---|---|");
      row("reads", came.reads());
      say("");
      say(
          came.done()
              + " changes were made, "
              + came.stale()
              + " refused because somebody else had been first, "
              + came.refused()
              + " because they would have broken a rule; no other request failed.");
    }
  }

  private void row(String what, List<Double> millis) {
    List<Double> sorted = millis.stream().sorted().toList();
    say(
        String.format(
            Locale.ROOT,
            "| %s | %,d | %.1f | %.1f | %.1f |",
            what,
            sorted.size(),
            sorted.get(sorted.size() / 2),
            sorted.get(Math.min(sorted.size() - 1, sorted.size() * 95 / 100)),
            sorted.get(sorted.size() - 1)));
  }

  private void say(String line) {
    lines.add(line);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
