package pressweek.data.thread;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pressweek.data.published.PrintedTable;

/** The standard threads, from {@code unified.csv} and {@code metric.csv}, read once. */
final class ThreadTables {
  /** How much of an inch a decimal may be off its size: half a thousandth, as 0.312 is off 5/16. */
  private static final double ROUNDED_INCH = 0.000_501;

  private static final double SAME = 1e-9;

  private static final List<List<Thread>> INCH = inch();
  private static final Map<Double, List<Thread>> METRIC = metric();
  private static final List<Thread> ALL = all(INCH, METRIC);
  private static final Map<String, String> KEYS = keys(ALL);

  private ThreadTables() {}

  /** All threads, unified before metric, by size, coarse before fine. */
  static List<Thread> all() {
    return ALL;
  }

  /** The spelling of a thread for comparing. */
  static String key(Thread thread) {
    return KEYS.getOrDefault(thread.name(), thread.name());
  }

  /** The threads of a size, coarse before fine; none when it is not listed. */
  static List<Thread> ofSize(ThreadText text) {
    if (!text.inch()) {
      return METRIC.getOrDefault(text.size(), List.of());
    }
    double allowed = text.rounded() ? ROUNDED_INCH : SAME;
    for (List<Thread> size : INCH) {
      if (Math.abs(size.get(0).majorInch() - text.size()) <= allowed) {
        return size;
      }
    }
    return List.of();
  }

  private static List<List<Thread>> inch() {
    List<List<Thread>> sizes = new ArrayList<>();
    for (List<String> row : PrintedTable.rows(ThreadTables.class, "unified.csv")) {
      sizes.add(
          List.of(
              unified(Series.UNC, row.get(0), row.get(1), row.get(2)),
              unified(Series.UNF, row.get(0), row.get(1), row.get(3))));
    }
    return List.copyOf(sizes);
  }

  private static Thread unified(Series series, String size, String inch, String tpi) {
    return new Thread(
        series,
        size + "-" + tpi + " " + series,
        Double.parseDouble(inch) * Thread.INCH_MM,
        Thread.INCH_MM / Double.parseDouble(tpi));
  }

  private static Map<Double, List<Thread>> metric() {
    Map<Double, List<Thread>> sizes = new HashMap<>();
    for (List<String> row : PrintedTable.rows(ThreadTables.class, "metric.csv")) {
      List<Thread> threads = new ArrayList<>();
      threads.add(metric(Series.METRIC_COARSE, row.get(0), row.get(1)));
      for (String fine : row.get(2).split(";")) {
        threads.add(metric(Series.METRIC_FINE, row.get(0), fine));
      }
      sizes.put(threads.get(0).majorMm(), List.copyOf(threads));
    }
    return Map.copyOf(sizes);
  }

  private static Thread metric(Series series, String size, String pitch) {
    return new Thread(
        series, "M" + size + "x" + pitch, Double.parseDouble(size), Double.parseDouble(pitch));
  }

  private static List<Thread> all(List<List<Thread>> inch, Map<Double, List<Thread>> metric) {
    List<Thread> all = new ArrayList<>();
    inch.forEach(all::addAll);
    metric.keySet().stream().sorted().forEach(s -> all.addAll(metric.getOrDefault(s, List.of())));
    return List.copyOf(all);
  }

  private static Map<String, String> keys(List<Thread> all) {
    Map<String, String> keys = new HashMap<>();
    all.forEach(t -> keys.put(t.name(), t.name().replace(" ", "").toUpperCase(Locale.ROOT)));
    return Map.copyOf(keys);
  }
}
