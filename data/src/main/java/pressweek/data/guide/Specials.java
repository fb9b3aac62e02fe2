package pressweek.data.guide;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds the next free special of a base code. */
public final class Specials {
  private final Guide guide;

  /** The specials of a guide. */
  public Specials(Guide guide) {
    this.guide = guide;
  }

  /**
   * The code of the next special of an item: its own code with the first mark that none of the
   * codes in use bears on the same base.
   *
   * @param base code of the item that it is based on, special itself or not
   * @param inUse codes of items that there are; those that cannot be read do not count
   */
  public Encoded next(String base, Collection<String> inUse) {
    Decoded decoded = guide.decode(base);
    if (!decoded.good()) {
      return new Encoded("", "", decoded.faults());
    }
    for (Field field : guide.sheet().fields()) {
      if (field instanceof Field.Special special) {
        Map<String, String> values = values(decoded);
        values.remove(special.attribute());
        Encoded next = next(special, values, inUse);
        if (next.good()) {
          return next;
        }
      }
    }
    return new Encoded(
        "",
        decoded.family(),
        List.of("code \"" + base + "\": no special mark is free, or its family has none"));
  }

  private Encoded next(Field.Special special, Map<String, String> base, Collection<String> inUse) {
    Set<String> used = new HashSet<>();
    for (String code : inUse) {
      Decoded other = guide.decode(code);
      if (other.good() && other.special()) {
        Map<String, String> values = values(other);
        String mark = values.remove(special.attribute());
        if (mark != null && values.equals(base)) {
          used.add(mark);
        }
      }
    }
    return special
        .marks()
        .firstFree(used)
        .map(
            mark -> {
              Map<String, String> values = new LinkedHashMap<>(base);
              values.put(special.attribute(), mark);
              return guide.encoder().encode(values);
            })
        .orElseGet(() -> new Encoded("", "", List.of("all marks are in use")));
  }

  private static Map<String, String> values(Decoded decoded) {
    Map<String, String> values = new LinkedHashMap<>();
    decoded.attributes().forEach(attribute -> values.put(attribute.name(), attribute.value()));
    return values;
  }
}
