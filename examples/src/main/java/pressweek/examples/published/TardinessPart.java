package pressweek.examples.published;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import pressweek.examples.Curves;
import pressweek.examples.ResultsFile;
import pressweek.examples.RunTable;
import pressweek.examples.RunTable.Row;

/** What {@link TardinessBenchmark} found: tables, and a picture of the gaps over the seconds. */
final class TardinessPart {
  static final String HEADING = "Published: weighted tardiness";
  private static final String PICTURE = "tardiness.svg";

  private final List<PublishedValue> known;
  private final RunTable table;
  private final List<String> lines = new ArrayList<>();

  /** Cases of one block of the library. */
  private record Block(String name, int from, int to) {
    boolean has(PublishedValue value) {
      return from <= value.number() && value.number() <= to;
    }
  }

  private static final Block EASY = new Block("1-40", 1, 40);
  private static final List<Block> TIGHT =
      List.of(new Block("41-80", 41, 80), new Block("81-120", 81, 120));

  /** A run with the value that is known of its case. */
  private record Found(PublishedValue known, Row row) {
    double gap() {
      return known.gapPercent(row.number("value"));
    }
  }

  TardinessPart(List<PublishedValue> known, RunTable table) {
    this.known = known;
    this.table = table;
  }

  /** Writes the part and the picture beside the page. */
  void write(ResultsFile page, Path results) throws IOException {
    page.replace(HEADING, lines());
    Files.writeString(results.resolveSibling(PICTURE), picture());
  }

  private List<String> lines() {
    lines.addAll(table.machines(TardinessBenchmark.class));
    say("");
    say(
        "Cases of V. A. Cicirello's library of weighted tardiness with sequence-dependent setups on one machine (2003;"
            + " doi:10.7910/DVN/VHA0VQ; every other of the 120), 60 jobs each, planned as a week on one press; seed "
            + String.join(", ", table.distinct("seed"))
            + ".");
    say(
        "*Recalled or verified* is the best value in the literature as recalled; where *verified* says no, no schedule of"
            + " that value was at hand to check it by.");
    tight();
    easy();
    say("");
    say("![Mean gap over seconds](" + PICTURE + ")");
    cases();
    return lines;
  }

  private void tight() {
    say("");
    say("| cases | run | seconds | at or below | mean gap | mean gap of ATCS |");
    say("|---|---|---|---|---|---|");
    for (Block block : TIGHT) {
      for (int seconds : table.numbers("seconds")) {
        List<Found> found = found(block, seconds);
        if (!found.isEmpty()) {
          say(
              String.format(
                  Locale.ROOT,
                  "| %s | %d of %d | %d | %d | %.2f %% | %.1f %% |",
                  block.name(),
                  found.size(),
                  known.stream().filter(block::has).count(),
                  seconds,
                  found.stream().filter(f -> f.row().number("value") <= f.known().value()).count(),
                  mean(found, Found::gap),
                  mean(found, f -> f.known().gapPercent(f.row().number("atcs")))));
        }
      }
    }
    say("");
    say(
        "For comparison: a plain annealer, best of two runs of 10 s and 7.5 s on one core of a first study, was 1.40 % above on"
            + " these cases of 41-80 and 0.24 % on those of 81-120; ATCS is the best of the planner's grid, measured here.");
  }

  private void easy() {
    say("");
    say("Where most due times can be kept (1-40), values are near 0 and percents mislead; sums:");
    say("");
    say("| cases | run | seconds | sum found | sum recalled or verified | above | ATCS |");
    say("|---|---|---|---|---|---|---|");
    for (int seconds : table.numbers("seconds")) {
      List<Found> found = found(EASY, seconds);
      if (!found.isEmpty()) {
        double sum = sum(found, f -> f.row().number("value"));
        double best = sum(found, f -> f.known().value());
        say(
            String.format(
                Locale.ROOT,
                "| %s | %d of %d | %d | %,.0f | %,.0f | %,.0f | %,.0f |",
                EASY.name(),
                found.size(),
                known.stream().filter(EASY::has).count(),
                seconds,
                sum,
                best,
                sum - best,
                sum(found, f -> f.row().number("atcs"))));
      }
    }
  }

  private void cases() {
    List<Integer> limits = table.numbers("seconds");
    StringBuilder heading = new StringBuilder("| case | recalled or verified | verified |");
    limits.forEach(s -> heading.append(" ").append(s).append(" s |"));
    say("");
    say(heading.toString());
    say("|---".repeat(3 + limits.size()) + "|");
    for (PublishedValue value : known) {
      StringBuilder line = new StringBuilder();
      line.append(
          String.format(
              Locale.ROOT,
              "| %s | %,.0f | %s |",
              value.name(),
              value.value(),
              value.verified() ? "yes" : "no"));
      for (int seconds : limits) {
        String cell =
            table.rows(r -> isOf(r, value, seconds)).stream()
                .findFirst()
                .map(r -> String.format(Locale.ROOT, "%,.0f", r.number("value")))
                .orElse("");
        line.append(" ").append(cell).append(" |");
      }
      say(line.toString());
    }
  }

  private String picture() {
    Curves curves = new Curves("Mean gap to the best known value", "percent");
    for (Block block : TIGHT) {
      for (int seconds : table.numbers("seconds")) {
        List<Found> found = found(block, seconds);
        if (!found.isEmpty()) {
          curves.add("cases " + block.name(), seconds, mean(found, Found::gap));
        }
      }
    }
    return curves.svg();
  }

  private List<Found> found(Block block, int seconds) {
    List<Found> found = new ArrayList<>();
    for (PublishedValue value : known) {
      if (block.has(value)) {
        table.rows(r -> isOf(r, value, seconds)).forEach(row -> found.add(new Found(value, row)));
      }
    }
    return found;
  }

  private static boolean isOf(Row row, PublishedValue value, int seconds) {
    return row.text("case").equals(value.name()) && row.has("seconds", seconds);
  }

  private static double sum(List<Found> found, ToDoubleFunction<Found> of) {
    return found.stream().mapToDouble(of).sum();
  }

  private static double mean(List<Found> found, ToDoubleFunction<Found> of) {
    return sum(found, of) / found.size();
  }

  private void say(String line) {
    lines.add(line);
  }
}
