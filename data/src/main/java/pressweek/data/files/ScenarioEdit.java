package pressweek.data.files;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * One change of a scenario.
 *
 * @param verb what is done
 * @param file the file of the folder
 * @param line line of the scenario in which it begins
 * @param list path of the list within a JSON file, for example {@code shifts}; empty for none
 * @param where the rows or entries that it changes; empty for all
 * @param values what is set, or the factors of a scale, or the cells of a new row, by column or
 *     path; a list's new entry that is no object has the empty key
 */
public record ScenarioEdit(
    Verb verb,
    InputFile file,
    int line,
    String list,
    List<Condition> where,
    Map<String, JsonTree> values) {

  /** What a change does. Rows are left out first, then set, then scaled, then added. */
  public enum Verb {
    DROP,
    SET,
    SCALE,
    ADD;

    /** The key of its list in a scenario file. */
    String key() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The key under which one of its changes says its values; empty for none. */
    String valueKey() {
      return this == ADD ? "row" : this == DROP ? "" : key();
    }
  }

  /**
   * What a column or key must say.
   *
   * @param key column or path; empty for an entry that is no object
   * @param line line of the scenario
   * @param patterns texts of which one must fit; {@code *} stands for any text
   */
  public record Condition(String key, int line, List<String> patterns) {
    public Condition {
      patterns = List.copyOf(patterns);
    }

    /** The condition as a person reads it. */
    String text() {
      String any = "\"" + String.join("\" or \"", patterns) + "\"";
      return key.isEmpty() ? any : key + " " + any;
    }
  }

  public ScenarioEdit {
    where = List.copyOf(where);
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** The rows that it names, as a person reads it. */
  String whereText() {
    return String.join(" and ", where.stream().map(Condition::text).toList());
  }
}
