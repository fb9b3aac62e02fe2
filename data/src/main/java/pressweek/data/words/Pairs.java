package pressweek.data.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import pressweek.data.guide.Encoder;
import pressweek.data.guide.Objection;

/**
 * Which two values some item has together. What the encoder has once been asked is remembered,
 * since most of what contradicts itself does so in two values.
 */
final class Pairs {
  /** More pairs than these are asked for each time anew. */
  private static final int MOST_REMEMBERED = 200_000;

  /** An odd number by which keys are multiplied, since alike keys share places in a table. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private final Encoder encoder;
  private final Map<Value, Integer> ids = new ConcurrentHashMap<>();
  private final AtomicInteger made = new AtomicInteger();
  private final Map<Long, Boolean> possible = new ConcurrentHashMap<>();
  private final Map<Map<String, String>, List<Objection>> reasons = new ConcurrentHashMap<>();

  /** A value of an attribute. */
  private record Value(String attribute, String value) {}

  Pairs(Encoder encoder) {
    this.encoder = encoder;
  }

  /** True when some item has both values. */
  boolean together(Map.Entry<String, String> a, Map.Entry<String, String> b) {
    if (a.getKey().equals(b.getKey())) {
      return a.getValue().equals(b.getValue());
    }
    if (possible.size() > MOST_REMEMBERED) {
      return isPossible(a, b);
    }
    int one = id(a);
    int other = id(b);
    long key = (((long) Math.min(one, other) << 32) + Math.max(one, other)) * SPREAD;
    Boolean known = possible.get(key);
    if (known == null) {
      known = isPossible(a, b);
      possible.put(key, known);
    }
    return known;
  }

  private int id(Map.Entry<String, String> entry) {
    Value value = new Value(entry.getKey(), entry.getValue());
    Integer id = ids.get(value);
    return id == null ? ids.computeIfAbsent(value, v -> made.getAndIncrement()) : id;
  }

  /**
   * True when a code says both; also when none says one of them alone, since then only more than
   * two values together tell.
   */
  private boolean isPossible(Map.Entry<String, String> a, Map.Entry<String, String> b) {
    Map<String, String> both = Map.of(a.getKey(), a.getValue(), b.getKey(), b.getValue());
    return isSaid(both)
        || !isSaid(Map.of(a.getKey(), a.getValue()))
        || !isSaid(Map.of(b.getKey(), b.getValue()));
  }

  private boolean isSaid(Map<String, String> values) {
    return !encoder.drafts(values, 1).isEmpty();
  }

  /** True when each of the values goes with each that is known. */
  boolean admit(Map<String, String> known, Map<String, String> values) {
    for (Map.Entry<String, String> value : values.entrySet()) {
      for (Map.Entry<String, String> old : known.entrySet()) {
        if (!together(old, value)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Why two values exclude each other. */
  List<Objection> reasons(Map<String, String> pair) {
    return reasons.size() > MOST_REMEMBERED
        ? encoder.objections(pair)
        : reasons.computeIfAbsent(new LinkedHashMap<>(pair), encoder::objections);
  }

  /** The first two values that exclude each other; nothing when there are none. */
  Map<String, String> apart(Map<String, String> known) {
    List<Map.Entry<String, String>> all = List.copyOf(known.entrySet());
    for (int i = 1; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (!together(all.get(j), all.get(i))) {
          Map<String, String> pair = new LinkedHashMap<>();
          pair.put(all.get(j).getKey(), all.get(j).getValue());
          pair.put(all.get(i).getKey(), all.get(i).getValue());
          return pair;
        }
      }
    }
    return Map.of();
  }
}
