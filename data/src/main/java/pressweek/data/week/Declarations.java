package pressweek.data.week;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.declared.Declared;
import pressweek.data.declared.Needs;
import pressweek.data.declared.Subject;
import pressweek.data.declared.SupplierPaper;
import pressweek.data.files.InsertRow;
import pressweek.data.files.ResinRow;
import pressweek.data.problem.Item;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/**
 * The plant's declarations of food contact, restricted substances and the like. Nothing is ever
 * assumed: without a record for the resin, the colour, every insert and every tip an order that
 * asks for one is not planned. Pressweek certifies nothing; it only looks for the record.
 */
final class Declarations {
  private static final Set<String> FREE_OF_CHROMATE = Set.of("trivalent", "none");

  private final Declared declared;
  private final InsertFinder inserts;
  private final Tips tips;

  Declarations(Declared declared, InsertFinder inserts, Tips tips) {
    this.declared = declared;
    this.inserts = inserts;
    this.tips = tips;
  }

  /** What stands in the way of an item, whom to ask, and what to enter. */
  private static final class Missing {
    final List<String> reasons = new ArrayList<>();
    final Set<String> asked = new LinkedHashSet<>();
    final Set<String> rows = new LinkedHashSet<>();
    final Set<String> entries = new LinkedHashSet<>();

    Stopped<ReadItem> stopped() {
      List<String> then = new ArrayList<>();
      if (!rows.isEmpty()) {
        then.add("add to records.csv (what,for): " + String.join("; ", rows));
      }
      then.addAll(entries);
      return new Stopped<>(
          String.join("; ", reasons),
          String.join("; ", asked) + ", then " + String.join("; and ", then));
    }
  }

  /** Done when every need has a record for all that goes into the item, valid on {@code atMin}. */
  Attempt<ReadItem> check(Set<String> needs, ReadItem item, Optional<ResinRow> resin, int atMin) {
    Missing missing = new Missing();
    List<Subject> subjects = subjects(item, resin);
    for (String need : needs) {
      records(subjects, need, atMin, missing);
      if (need.equals(Needs.ROHS)) {
        passivation(item, missing);
      }
    }
    return missing.reasons.isEmpty() ? new Done<>(item) : missing.stopped();
  }

  /**
   * True when a record that is valid on {@code atMin} approves regrind of a resin for all needs.
   */
  boolean regrindApproved(String resin, Set<String> needs, int atMin) {
    return needs.stream().allMatch(need -> declared.regrind(resin, need, atMin).isPresent());
  }

  private List<Subject> subjects(ReadItem item, Optional<ResinRow> resin) {
    List<Subject> metal = new ArrayList<>();
    for (InsertNeed need : item.inserts()) {
      metal.add(Subject.insert(need.insert()));
      tips.of(need.insert()).forEach(tip -> metal.add(Subject.tip(tip)));
    }
    tips.ofItem(item.item().code()).forEach(tip -> metal.add(Subject.tip(tip)));
    String grade = resin.map(ResinRow::grade).orElse("");
    return Subject.of(Subject.resin(item.value(Item.RESIN), grade), item.value(Item.COLOUR), metal);
  }

  private void records(List<Subject> subjects, String need, int atMin, Missing missing) {
    List<String> without = new ArrayList<>();
    for (Subject subject : subjects) {
      if (declared.valid(subject, need, atMin).isEmpty()) {
        without.add(subject.words() + expired(subject, need));
        missing.asked.add("ask " + subject.supplier() + " for " + SupplierPaper.of(subject, need));
        missing.rows.add((subject.id().isEmpty() ? "its number" : subject.id()) + "," + need);
      }
    }
    if (!without.isEmpty()) {
      missing.reasons.add("no " + need + " record for " + String.join(", ", without));
    }
  }

  private String expired(Subject subject, String need) {
    return declared.all(subject, need).stream()
        .findFirst()
        .map(row -> " (" + row.source() + " expires too early)")
        .orElse("");
  }

  /**
   * Hexavalent chromium is restricted (Directive 2011/65/EU, Annex II, 0.1 % of the chromate film
   * itself), and the colour of a finish does not tell; so the passivation must be known.
   */
  private void passivation(ReadItem item, Missing missing) {
    for (int i = 0; i < item.inserts().size(); i++) {
      String id = item.inserts().get(i).insert();
      String passivation = passivation(item, i);
      Subject insert = Subject.insert(id);
      if (passivation.isEmpty()) {
        missing.reasons.add("the passivation of " + insert.words() + " is not known");
        missing.asked.add("ask " + insert.supplier() + " for the plating certificate");
        missing.entries.add("enter the passivation in inserts.csv, trivalent or none");
      } else if (!FREE_OF_CHROMATE.contains(passivation)) {
        missing.reasons.add(insert.words() + " has a " + passivation + " passivation");
        missing.asked.add("ask " + insert.supplier() + " for a trivalent one");
        missing.entries.add("enter it in inserts.csv and name it in the order or in bom.csv");
      }
    }
  }

  /** By the insert's own record; what the item says counts for its first insert. */
  private String passivation(ReadItem item, int place) {
    String own =
        inserts.row(item.inserts().get(place).insert()).map(InsertRow::passivation).orElse("");
    return own.isEmpty() && place == 0 ? item.value(ItemSheet.PASSIVATION) : own;
  }
}
