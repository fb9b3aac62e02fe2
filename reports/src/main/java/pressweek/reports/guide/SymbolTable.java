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

  private Element grouped(Grouping grouping) {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    boolean inSymbol = true;
    for (Map.Entry<String, Field.Entry> symbol : table.entries().entrySet()) {
      Map<String, String> sets = symbol.getValue().sets();
      String by = sets.getOrDefault(grouping.by(), "");
      groups.computeIfAbsent(by, k -> new ArrayList<>()).add(symbol.getKey());
      inSymbol &= symbol.getKey().endsWith(sets.getOrDefault(grouping.rest(), "-"));
    }
    Element rows = Element.of("table", "grouped");
    for (Map.Entry<String, List<String>> group : groups.entrySet()) {
      Element cell = Element.of("td");
      for (String symbol : group.getValue()) {
        Element item = Element.of("span", "item").add(Paper.code(symbol));
        if (!inSymbol) {
          String rest = table.entries().get(symbol).sets().getOrDefault(grouping.rest(), "");
          item.text(" " + rest);
        }
        cell.add(item).text(" ");
      }
      rows.add(Element.of("tr").add("td", words.value(grouping.by(), group.getKey())).add(cell));
    }
    String unit =
        grouping.rest().endsWith("_mm") ? ", mm" : grouping.rest().endsWith("_in") ? ", in" : "";
    String rest = words.attribute(grouping.rest()) + unit;
    String note = inSymbol ? "the figure is the " + rest : "behind the symbol: " + rest;
    return Element.of("div").add(rows).add(Element.of("p", "fill").text(note));
  }
}
