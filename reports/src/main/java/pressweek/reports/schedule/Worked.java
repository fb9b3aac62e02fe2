package pressweek.reports.schedule;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** What reports have worked out from a plan, each once, whoever asks and however many at a time. */
final class Worked {
  private final Map<Class<?>, Slot> slots = new ConcurrentHashMap<>();

  private static final class Slot {
    private Optional<Object> result = Optional.empty();

    synchronized Object get(Supplier<?> work) {
      if (result.isEmpty()) {
        result = Optional.of(work.get());
      }
      return result.get();
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
