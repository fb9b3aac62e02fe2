package pressweek.data.week;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.InsertRow;
import pressweek.data.files.RecordRow;
import pressweek.data.files.ResinRow;
import pressweek.data.problem.Item;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/**
 * The plant's declarations of food contact, restricted substances and the like. Nothing is ever
 * assumed: without a record for the resin, the colour and every insert an order that asks for one
 * is not planned. Pressweek certifies nothing; it only looks for the record.
 */
final class Declarations {
  /** Before a resin's id: the approval of its regrind. */
  static final String REGRIND = "regrind:";

  private static final String HEXAVALENT = "hexavalent";

  private final Map<String, List<RecordRow>> records = new HashMap<>();
  private final InsertFinder inserts;
  private final PlantClock clock;

  /**
   * Something that needs a record: the names under which it may stand, what it is called, and whom
   * to ask.
   */
  private record Subject(List<String> names, String words, String ask) {}

  Declarations(List<RecordRow> rows, InsertFinder inserts, PlantClock clock) {
    for (RecordRow row : rows) {
      records.computeIfAbsent(key(row.what(), row.need()), k -> new ArrayList<>()).add(row);
    }
    this.inserts = inserts;
    this.clock = clock;
  }

  private static String key(String what, String need) {
    return what + "\n" + need.toLowerCase(Locale.ROOT);
  }

  /** What an order line asks for: its own needs, and those that the item code says. */
  static Set<String> needs(List<String> ordered, ReadItem item) {
    Set<String> needs = new LinkedHashSet<>(ordered);
    for (String need : List.of(Item.FOOD, ItemSheet.ROHS)) {
      if (item.value(need).equals("yes")) {
        needs.add(need);
      }
    }
    return needs;
  }

  /** Done when every need has a record for all that goes into the item, valid on {@code atMin}. */
  Attempt<ReadItem> check(Set<String> needs, ReadItem item, Optional<ResinRow> resin, int atMin) {
    List<String> reasons = new ArrayList<>();
    Set<String> cures = new LinkedHashSet<>();
    List<Subject> subjects = subjects(item, resin);
    for (String need : needs) {
      List<String> missing = new ArrayList<>();
      for (Subject subject : subjects) {
        if (!declared(subject, need, atMin)) {
          missing.add(subject.words() + expired(subject, need));
          cures.add("ask " + subject.ask() + " for a " + need + " declaration");
        }
      }
      if (!missing.isEmpty()) {
        reasons.add("no " + need + " record for " + String.join(", ", missing));
      }
      if (need.equals(ItemSheet.ROHS)) {
        hexavalent(item, reasons, cures);
      }
    }
    return reasons.isEmpty()
        ? new Done<>(item)
        : new Stopped<>(
            String.join("; ", reasons), String.join("; ", cures) + ", and enter it in records.csv");
  }

  /** True when a record that is valid on {@code atMin} stands under this name for every need. */
  boolean recorded(String name, Set<String> needs, int atMin) {
    return needs.stream()
        .allMatch(
            need ->
                records.getOrDefault(key(name, need), List.of()).stream()
                    .anyMatch(row -> valid(row, atMin)));
  }

  private List<Subject> subjects(ReadItem item, Optional<ResinRow> resin) {
    List<Subject> subjects = new ArrayList<>();
    String resinId = item.value(Item.RESIN);
    String grade = resin.map(ResinRow::grade).orElse("");
    subjects.add(
        resinId.isEmpty()
            ? new Subject(List.of(), "its resin, which is not known", "the resin supplier")
            : new Subject(
                List.of(resinId, grade),
                ("resin " + resinId + " " + grade).strip(),
                "the supplier of resin " + resinId));
    String colour = item.value(Item.COLOUR);
    if (!colour.isEmpty()) {
      subjects.add(
          new Subject(
              List.of(resinId + ":" + colour, colour),
              "colour " + colour,
              "the supplier of colour " + colour));
    }
    for (InsertNeed need : item.inserts()) {
      String id = need.insert();
      String words = id.isEmpty() ? "its insert, which is not known by number" : "insert " + id;
      subjects.add(
          new Subject(
              List.of(id), words, "the supplier of " + (id.isEmpty() ? "the insert" : words)));
      String tip = inserts.row(id).map(InsertRow::tip).orElse("");
      if (!tip.isEmpty()) {
        subjects.add(new Subject(List.of(tip), "tip " + tip, "the supplier of tip " + tip));
      }
    }
    return subjects;
  }

  private boolean declared(Subject subject, String need, int atMin) {
    return rows(subject, need).stream().anyMatch(row -> valid(row, atMin));
  }

  private boolean valid(RecordRow row, int atMin) {
    return row.expires().map(expires -> clock.minute(expires) > atMin).orElse(true);
  }

  private List<RecordRow> rows(Subject subject, String need) {
    return subject.names().stream()
        .filter(name -> !name.isEmpty())
        .flatMap(name -> records.getOrDefault(key(name, need), List.of()).stream())
        .toList();
  }

  private String expired(Subject subject, String need) {
    return rows(subject, need).stream()
        .findFirst()
        .map(row -> " (" + row.at() + " expires too early)")
        .orElse("");
  }

  /**
   * A hexavalent passivation contradicts a declaration of restricted substances, unless that names
   * an exemption.
   */
  private void hexavalent(ReadItem item, List<String> reasons, Set<String> cures) {
    for (InsertNeed need : item.inserts()) {
      boolean hexavalent =
          inserts.row(need.insert()).filter(r -> r.passivation().equals(HEXAVALENT)).isPresent();
      boolean exempt =
          records.getOrDefault(key(need.insert(), ItemSheet.ROHS), List.of()).stream()
              .anyMatch(row -> !row.exemption().isEmpty());
      if (hexavalent && !exempt) {
        reasons.add("insert " + need.insert() + " has a hexavalent passivation");
        cures.add("ask the supplier of insert " + need.insert() + " for a trivalent one");
      }
    }
  }
}
