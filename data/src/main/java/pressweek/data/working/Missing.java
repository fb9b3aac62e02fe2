package pressweek.data.working;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The columns that a figure of a run lacks, those of one row together. */
final class Missing {
  private final RunFacts facts;
  private final List<String> mold = new ArrayList<>();
  private final List<String> press = new ArrayList<>();
  private final List<String> resin = new ArrayList<>();
  private final List<String> others = new ArrayList<>();

  Missing(RunFacts facts) {
    this.facts = facts;
  }

  /** Notes a column of the mold's row when its figure is not known. */
  Missing mold(OptionalDouble figure, String column) {
    return mold(figure.isPresent(), column);
  }

  /** Notes columns of the mold's row unless they are known. */
  Missing mold(boolean known, String column) {
    return add(mold, known, column);
  }

  /** Notes a column of the press's row when its figure is not known. */
  Missing press(OptionalDouble figure, String column) {
    return press(figure.isPresent(), column);
  }

  /** Notes columns of the press's row unless they are known. */
  Missing press(boolean known, String column) {
    return add(press, known, column);
  }

  /** Notes a column of the resin's row when its figure is not known. */
  Missing resin(OptionalDouble figure, String column) {
    return resin(figure.isPresent(), column);
  }

  /** Notes columns of the resin's row unless they are known. */
  Missing resin(boolean known, String column) {
    return add(resin, known, column);
  }

  /** Notes a recorded cycle when none counts. */
  Missing cycle() {
    String where = "standards.csv cycle_s, or molds.csv cycle_s, of " + facts.mold().id();
    return add(others, facts.pace().counts().isPresent(), where);
  }

  private Missing add(List<String> columns, boolean known, String column) {
    if (!known) {
      columns.add(column);
    }
    return this;
  }

  /** True when something is not known. */
  boolean any() {
    return !columns().isEmpty();
  }

  /** The line that says so. */
  Line line(String what) {
    return new Line.Unknown(what, columns());
  }

  /** The columns in a sentence, for a figure that has a default. */
  String words() {
    return String.join(", and ", columns());
  }

  private List<String> columns() {
    List<String> columns = new ArrayList<>();
    if (!mold.isEmpty()) {
      columns.add("molds.csv " + String.join(", ", mold) + " of " + facts.mold().id());
    }
    if (!press.isEmpty()) {
      columns.add("presses.csv " + String.join(", ", press) + " of " + facts.press().press());
    }
    if (!resin.isEmpty()) {
      String id = facts.plastic().resinId();
      String row = "resins.csv " + String.join(", ", resin);
      columns.add(
          id.isEmpty()
              ? row + ", and the resin itself (guide.json, orders.csv resin, or resin= here)"
              : row + " of " + id);
    }
    columns.addAll(others);
    return columns;
  }
}
