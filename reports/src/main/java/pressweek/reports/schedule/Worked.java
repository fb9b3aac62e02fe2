package pressweek.reports.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** What reports have worked out from a plan, each once, whoever asks and however many at a time. */
final class Worked {
  private final Map<Class<?>, Slot> slots = new ConcurrentHashMap<>();

  private static final class Slot {
    /** The result, once there is one. */
    private final List<Object> result = new ArrayList<>(1);

    synchronized Object get(Supplier<?> work) {
      if (result.isEmpty()) {
        result.add(work.get());
      }
      return result.get(0);
    }
  }

  /**
   * The result of a report.
   *
   * @param report whose result it is; always with the same kind of result
   * @param work works it out, without asking for itself
   */
  @SuppressWarnings({
    "unchecked",
    "TypeParameterUnusedInFormals"
  }) // a report has one kind of result
  <T> T once(Class<?> report, Supplier<T> work) {
    return (T) slots.computeIfAbsent(report, r -> new Slot()).get(work);
  }
}
