package pressweek.data.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A thread as the words name it, beside the threads that the plant makes.
 *
 * @param name the thread in full, or as far as it was named
 * @param values its value by attribute; empty when it is not made, or not one
 * @param choices threads of the plant: those it can be when it was not named in full, else the
 *     nearest ones when it is not made
 * @param made true when at least one of the plant's threads is meant
 * @param assumption why it is taken for one of them though it was not named in full; empty when it
 *     was
 */
record Cut(
    String name,
    Map<String, String> values,
    List<String> choices,
    boolean made,
    String assumption) {
  Cut {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    choices = List.copyOf(choices);
  }

  /** True when it is one of the plant's threads. */
  boolean settled() {
    return !values.isEmpty();
  }
}
