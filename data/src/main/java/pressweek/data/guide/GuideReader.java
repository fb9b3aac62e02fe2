package pressweek.data.guide;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.InputError;
import pressweek.data.files.JsonTree;
import pressweek.data.files.Nearest;

/** Reads {@code guide.json}; {@code docs/input-files.md} describes it. */
public final class GuideReader {
  /** What the key {@code schema} says. */
  public static final String SCHEMA = "pressweek-guide/1";

  private static final Set<String> KEYS =
      Set.of(
          "schema",
          "name",
          "separator",
          "ignore_case",
          "fill",
          "fields",
          "parts",
          "families",
          "rules",
          "words");

  private final JsonNotes notes = new JsonNotes();

  private GuideReader() {}

  /**
   * What came of a guide file.
   *
   * @param guide the guide; empty when there is an error
   * @param findings everything that is wrong with it
   */
  public record Result(Optional<Guide> guide, List<InputError> findings) {
    public Result {
      findings = List.copyOf(findings);
    }
  }

  /** Reads a guide; all its faults are found in one go. */
  public static Result read(JsonTree.Obj root) {
    GuideReader reader = new GuideReader();
    Guide guide = reader.guide(root);
    boolean bad = reader.notes.hasErrors();
    return new Result(bad ? Optional.empty() : Optional.of(guide), reader.notes.findings());
  }

  private Guide guide(JsonTree.Obj root) {
    notes.onlyKeys(root, KEYS);
    String schema = notes.text(root, "schema");
    if (!schema.equals(SCHEMA)) {
      notes.error(
          root.line(), "schema", "schema is \"" + schema + "\"; expected \"" + SCHEMA + "\"");
    }
    String separator = notes.text(root, "separator");
    boolean ignoreCase = notes.flag(root, "ignore_case");
    Fill fill = FieldReader.fill(notes, ignoreCase, root, Fill.NOTHING);
    Map<String, Field> fields =
        new FieldReader(notes, separator, ignoreCase, fill).read(notes.object(root, "fields"));
    PartsReader partsReader = new PartsReader(notes, fields, separator, ignoreCase);
    Map<String, Part> parts = partsReader.read(notes.object(root, "parts"));
    RuleReader rules = new RuleReader(notes);
    List<Family> families = families(root, parts, rules);
    return new Guide(
        new GuideSheet(
            notes.text(root, "name"),
            separator,
            ignoreCase,
            List.copyOf(fields.values()),
            families,
            rules.read(root),
            new PhraseReader(notes, rules).read(root)));
  }

  private List<Family> families(JsonTree.Obj root, Map<String, Part> parts, RuleReader rules) {
    List<Family> families = new ArrayList<>();
    Set<String> names = new HashSet<>();
    Map<String, Part> unused = new LinkedHashMap<>(parts);
    for (JsonTree value : notes.list(root, "families")) {
      notes
          .object(value, "families")
          .ifPresent(
              object -> {
                Family family = family(object, parts, rules);
                family.parts().forEach(part -> unused.remove(part.name()));
                if (!names.add(family.name())) {
                  notes.error(
                      object.line(),
                      "name",
                      "a second family \"" + family.name() + "\"; expected one of each name");
                }
                families.add(family);
              });
    }
    if (families.isEmpty()) {
      notes.error(root.line(), "families", "no families; expected at least one");
    }
    unused
        .keySet()
        .forEach(
            name -> notes.warning(root.line(), "parts", "part \"" + name + "\" is in no family"));
    return families;
  }

  private Family family(JsonTree.Obj object, Map<String, Part> parts, RuleReader rules) {
    notes.onlyKeys(object, Set.of("name", "parts", "rules"));
    String name = notes.text(object, "name");
    if (name.isEmpty()) {
      notes.error(object.line(), "name", "a family without \"name\"; expected its name in words");
    }
    List<Part> own = new ArrayList<>();
    for (JsonTree value : notes.list(object, "parts")) {
      String partName = notes.text(value, "parts");
      Part part = parts.get(partName);
      if (part == null) {
        String nearest = String.join(", ", Nearest.to(partName, parts.keySet(), 3));
        notes.error(
            value.line(), "parts", "unknown part \"" + partName + "\"; nearest: " + nearest);
      } else {
        own.add(part);
      }
    }
    if (own.isEmpty()) {
      notes.error(
          object.line(),
          "parts",
          "family \"" + name + "\" has no parts; expected a list of their names");
    }
    checkBlocks(name, own, object.line());
    return new Family(name, own, rules.read(object), object.line());
  }

  private void checkBlocks(String name, List<Part> parts, int line) {
    int row = 0;
    for (Part part : parts) {
      row = part.anyOrder() ? row + 1 : 0;
      if (row > Blocks.MOST_IN_A_ROW) {
        notes.error(
            line,
            "parts",
            "family \"%s\" has more than %d parts of any order in a row; expected fewer"
                .formatted(name, Blocks.MOST_IN_A_ROW));
        return;
      }
    }
  }
}
