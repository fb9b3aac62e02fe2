package pressweek.data.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import pressweek.data.files.InsertRow;
import pressweek.data.problem.Item;
import pressweek.data.thread.Threads;

/**
 * What an item says of an insert; an empty text is not compared.
 *
 * @param kind stud, through, blind and so on
 * @param thread thread
 * @param lengthMm length, mm
 * @param material material
 * @param finish finish
 * @param passivation passivation
 */
record InsertSpec(
    String kind,
    String thread,
    String lengthMm,
    String material,
    String finish,
    String passivation) {
  private static final double SAME_LENGTH_MM = 0.05;

  /** What a sheet says of the first insert. */
  static InsertSpec first(ItemSheet sheet) {
    return new InsertSpec(
        sheet.value(Item.INSERT_KIND),
        sheet.value(Item.THREAD),
        sheet.value(Item.LENGTH_MM),
        sheet.value(Item.INSERT_MATERIAL),
        sheet.value(Item.FINISH),
        sheet.value(ItemSheet.PASSIVATION));
  }

  /**
   * What it says of the second: material, finish and passivation are the first's unless said, all
   * three together.
   */
  static InsertSpec second(ItemSheet sheet) {
    String material = sheet.value(ItemSheet.SECOND + Item.INSERT_MATERIAL);
    String prefix = material.isEmpty() ? "" : ItemSheet.SECOND;
    return new InsertSpec(
        sheet.value(ItemSheet.SECOND + Item.INSERT_KIND),
        sheet.value(ItemSheet.SECOND + Item.THREAD),
        sheet.value(ItemSheet.SECOND + Item.LENGTH_MM),
        sheet.value(prefix + Item.INSERT_MATERIAL),
        sheet.value(prefix + Item.FINISH),
        sheet.value(prefix + ItemSheet.PASSIVATION));
  }

  /** The names of what the insert part has otherwise; none when it fits. */
  List<String> differences(InsertRow row) {
    List<String> differences = new ArrayList<>();
    compare(kind, row.kind(), "kind", differences);
    if (!thread.isEmpty() && !Threads.same(thread, row.thread())) {
      differences.add("thread " + orNone(row.thread()));
    }
    if (!sameLength(row.lengthMm())) {
      differences.add(
          "length "
              + (row.lengthMm().isPresent()
                  ? Words.exact(row.lengthMm().getAsDouble()) + " mm"
                  : "none"));
    }
    compare(material, row.material(), "material", differences);
    compare(finish, row.finish(), "finish", differences);
    compare(passivation, row.passivation(), "passivation", differences);
    return differences;
  }

  private static void compare(String wanted, String has, String name, List<String> differences) {
    if (!wanted.isEmpty() && !wanted.equalsIgnoreCase(has)) {
      differences.add(name + " " + orNone(has));
    }
  }

  private boolean sameLength(OptionalDouble has) {
    if (lengthMm.isEmpty()) {
      return true;
    }
    OptionalDouble wanted = Words.number(lengthMm);
    return has.isPresent()
        && wanted.isPresent()
        && Math.abs(has.getAsDouble() - wanted.getAsDouble()) <= SAME_LENGTH_MM;
  }

  private static String orNone(String text) {
    return text.isEmpty() ? "none" : text;
  }

  /**
   * True when the part has nothing that the item leaves open, so that it is what the item says and
   * no more.
   */
  boolean saysAllOf(InsertRow row) {
    return said(thread, row.thread())
        && said(material, row.material())
        && said(finish, row.finish())
        && said(passivation, row.passivation())
        && (!lengthMm.isEmpty() || row.lengthMm().isEmpty());
  }

  private static boolean said(String wanted, String has) {
    return !wanted.isEmpty() || has.isEmpty();
  }

  /** In words: {@code stud M8x1.25, 25 mm, steel, zinc}. */
  String words() {
    List<String> words = new ArrayList<>();
    words.add((kind + " " + thread).strip());
    words.add(lengthMm.isEmpty() ? "" : lengthMm + " mm");
    words.add(material);
    words.add(finish);
    words.add(passivation);
    return String.join(", ", words.stream().filter(word -> !word.isEmpty()).toList());
  }

  /** What inserts are looked up by: kind and thread in one spelling. */
  static String key(String kind, String thread) {
    return kind.toLowerCase(Locale.ROOT) + " " + Threads.key(thread);
  }
}
