package pressweek.reports.write;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.guide.CodeFault;
import pressweek.data.guide.CodeReading;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Item;
import pressweek.data.week.Explained;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;

/** What item codes mean, as CSV: one row a code, one column an attribute. */
public final class CodeTable {
  /** What records say of an item beside its code. */
  private static final List<String> RECORDED =
      List.of(
          Item.INSERT,
          Item.INSERT_KIND,
          Item.THREAD,
          Item.LENGTH_MM,
          Item.INSERT_MATERIAL,
          Item.FINISH,
          "passivation");

  private CodeTable() {}

  /**
   * The table of these codes, with a header row.
   *
   * @param guided attributes of the guide: a column each, whether a code has them or not
   */
  public static String csv(List<Explained> codes, Collection<String> guided) {
    Set<String> attributes = new LinkedHashSet<>(guided);
    attributes.addAll(RECORDED);
    codes.forEach(code -> code.attributes().forEach(attribute -> attributes.add(attribute.name())));
    ListingColumns<Explained> table =
        new ListingColumns<Explained>()
            .text("code", Explained::code)
            .text("canonical", code -> code.reading().decoded().good() ? code.canonical() : "")
            .text("good", code -> code.good() ? "yes" : "no")
            .text("family", Explained::family);
    for (String name : attributes) {
      table.text(name, code -> value(code, name));
    }
    Listing list =
        table
            .list("molds", code -> code.makers().stream().map(Explained.Maker::mold).toList())
            .text("trouble", Explained::trouble)
            .numberIfAny("position", code -> position(code.reading()))
            .text("expected", code -> code.reading().fault().map(CodeFault::expected).orElse(""))
            .list(
                "nearest", code -> code.reading().fault().map(CodeFault::nearest).orElse(List.of()))
            .listing("codes", "Codes", new Paper("", "", false, ""), codes);
    return ListingCsv.csv(list);
  }

  private static String value(Explained code, String name) {
    return code.attributes().stream()
        .filter(attribute -> attribute.name().equals(name))
        .map(Attribute::value)
        .collect(Collectors.joining());
  }

  /** The place of the fault, counted from 1; empty when there is none. */
  private static Optional<Integer> position(CodeReading reading) {
    return reading.fault().map(fault -> fault.start() + 1);
  }
}
