package pressweek.data.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.Field;
import pressweek.data.thread.Thread;
import pressweek.data.thread.Threads;

/** The threads that a plant makes: those values of its tables which are standard threads. */
final class PlantThreads {
  /** Two diameters that are the same but for rounding, mm. */
  private static final double SAME_MM = 0.013;

  private static final int NEAREST = 3;

  private final List<Made> all = new ArrayList<>();
  private final Set<String> attributes = new LinkedHashSet<>();

  /** A thread as an attribute has it. */
  private record Made(String attribute, String value, Thread thread) {}

  PlantThreads(Offer offer) {
    for (Field.Table table : offer.tables()) {
      for (Field.Entry entry : table.entries().values()) {
        entry.sets().forEach(this::add);
      }
    }
  }

  private void add(String attribute, String value) {
    Threads.find(value)
        .map(thread -> new Made(attribute, value, thread))
        .filter(made -> !all.contains(made))
        .ifPresent(
            made -> {
              all.add(made);
              attributes.add(attribute);
            });
  }

  /** Attributes that are threads. */
  Set<String> attributes() {
    return attributes;
  }

  /** A standard thread: the plant's own, or not made. */
  Cut named(Thread thread) {
    Map<String, String> values = values(thread);
    return values.isEmpty()
        ? notMade(thread.name(), thread.majorMm())
        : new Cut(thread.name(), values, List.of(), true, "");
  }

  private Map<String, String> values(Thread thread) {
    Map<String, String> values = new LinkedHashMap<>();
    for (Made made : all) {
      if (made.thread().equals(thread)) {
        values.putIfAbsent(made.attribute(), made.value());
      }
    }
    return values;
  }

  /** A thread that is not the plant's; the nearest ones are. */
  Cut notMade(String name, double majorMm) {
    List<String> nearest =
        all.stream()
            .map(Made::thread)
            .distinct()
            .sorted(Comparator.comparingDouble(thread -> Math.abs(thread.majorMm() - majorMm)))
            .limit(NEAREST)
            .map(Thread::name)
            .toList();
    return new Cut(name, Map.of(), nearest, false, "");
  }

  /**
   * A size without its pitch: the plant's only thread of that diameter, or one of several; not made
   * when there is none.
   */
  Cut ofSize(String name, double majorMm) {
    List<Thread> same =
        all.stream()
            .map(Made::thread)
            .distinct()
            .filter(thread -> Math.abs(thread.majorMm() - majorMm) <= SAME_MM)
            .toList();
    if (same.isEmpty()) {
      return notMade(name, majorMm);
    }
    if (same.size() > 1) {
      return new Cut(name, Map.of(), same.stream().map(Thread::name).toList(), true, "");
    }
    String only = same.get(0).name();
    return new Cut(
        only,
        values(same.get(0)),
        List.of(),
        true,
        name + " is taken as " + only + ", the plant's only thread of that diameter");
  }
}
