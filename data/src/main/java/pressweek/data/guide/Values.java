package pressweek.data.guide;

import java.util.Map;
import pressweek.data.thread.Threads;

/** When two values of an attribute are the same. */
public final class Values {
  private Values() {}

  /** A value in the spelling in which values are compared: threads and numbers have several. */
  static String key(String attribute, String value) {
    if (attribute.endsWith("thread")) {
      return Threads.key(value);
    }
    return value.endsWith("0") && value.indexOf('.') > 0 && isNumber(value)
        ? value.replaceFirst("\\.?0+$", "")
        : value;
  }

  private static boolean isNumber(String value) {
    int points = 0;
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      points += c == '.' ? 1 : 0;
      if (c != '.' && (c < '0' || c > '9')) {
        return false;
      }
    }
    return points == 1;
  }

  /** True when two values of an attribute are the same. */
  public static boolean same(String attribute, String a, String b) {
    return a.equals(b) || key(attribute, a).equals(key(attribute, b));
  }

  /** True when nothing in {@code more} says otherwise than {@code known}. */
  static boolean agree(Map<String, String> known, Map<String, String> more) {
    if (known.isEmpty()) {
      return true;
    }
    for (Map.Entry<String, String> said : more.entrySet()) {
      String value = known.get(said.getKey());
      if (value != null && !same(said.getKey(), value, said.getValue())) {
        return false;
      }
    }
    return true;
  }

  /** True when {@code all} holds everything that {@code known} says; an empty value is: missing. */
  static boolean covers(Map<String, String> all, Map<String, String> known) {
    for (Map.Entry<String, String> said : known.entrySet()) {
      if (!same(said.getKey(), all.getOrDefault(said.getKey(), ""), said.getValue())) {
        return false;
      }
    }
    return true;
  }
}
