package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.guide.Choice;
import pressweek.data.guide.Field;
import pressweek.reports.markup.Element;

/**
 * The symbols of a table and what they mean: a row a symbol, or, where several symbols share an
 * attribute, a row for each of its values.
 */
final class SymbolTable {
  private final Field.Table table;
  private final Phrasebook words;

  SymbolTable(Field.Table table, Phrasebook words) {
    this.table = table;
    this.words = words;
  }

  /** An attribute by which symbols are grouped, and the one in which those of a group differ. */
  private record Grouping(String by, String rest) {}

  Element element() {
    return grouping().map(this::grouped).orElseGet(this::plain);
  }

  private Element plain() {
    Element rows = Element.of("table");
    table
        .entries()
        .forEach(
            (symbol, entry) ->
                rows.add(
                    Element.of("tr")
                        .add(Element.of("th").add(Paper.code(symbol)))
                        .add("td", meaning(symbol, entry))));
    return rows;
  }

  private String meaning(String symbol, Field.Entry entry) {
    return words.underItsField(table, new Choice(symbol, symbol, entry.sets(), entry.line()));
  }

  /** Two attributes beside the table's own, one of which has few values. */
  private Optional<Grouping> grouping() {
    Set<Set<String>> shapes = new LinkedHashSet<>();
    table.entries().values().forEach(entry -> shapes.add(entry.sets().keySet()));
    List<String> others = new ArrayList<>();
    if (shapes.size() == 1) {
      others.addAll(shapes.iterator().next());
      others.remove(table.attribute());
    }
    if (others.size() != 2) {
      return Optional.empty();
    }
    for (int i = 0; i < 2; i++) {
      String by = others.get(i);
      long values =
          table.entries().values().stream()
              .map(entry -> entry.sets().getOrDefault(by, ""))
              .distinct()
              .count();
      if (values * 3 <= table.entries().size() * 2L) {
        return Optional.of(new Grouping(by, others.get(1 - i)));
      }
    }
    return Optional.empty();
  }

  /** A symbol and in what it differs from the others of its group. */
  private record Member(String symbol, String rest) {}

  private Element grouped(Grouping grouping) {
    Map<String, List<Member>> groups = new LinkedHashMap<>();
    table
        .entries()
        .forEach(
            (symbol, entry) ->
                groups
                    .computeIfAbsent(
                        entry.sets().getOrDefault(grouping.by(), ""), k -> new ArrayList<>())
                    .add(new Member(symbol, entry.sets().getOrDefault(grouping.rest(), ""))));
    boolean inSymbol =
        groups.values().stream()
            .flatMap(List::stream)
            .allMatch(
                member -> !member.rest().isEmpty() && member.symbol().endsWith(member.rest()));
    Element rows = Element.of("table", "grouped");
    groups.forEach(
        (value, members) ->
            rows.add(
                Element.of("tr")
                    .add("td", words.value(grouping.by(), value))
                    .add(cell(members, inSymbol))));
    String rest = words.attribute(grouping.rest()) + unit(grouping.rest());
    String note = inSymbol ? "the figure is the " + rest : "behind the symbol: " + rest;
    return Element.of("div").add(rows).add(Element.of("p", "fill").text(note));
  }

  private static Element cell(List<Member> members, boolean inSymbol) {
    Element cell = Element.of("td");
    for (Member member : members) {
      Element item = Element.of("span", "item").add(Paper.code(member.symbol()));
      cell.add(inSymbol ? item : item.text(" " + member.rest())).text(" ");
    }
    return cell;
  }

  private static String unit(String attribute) {
    return attribute.endsWith("_mm") ? ", mm" : attribute.endsWith("_in") ? ", in" : "";
  }
}
