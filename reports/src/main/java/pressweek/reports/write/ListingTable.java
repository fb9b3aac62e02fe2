package pressweek.reports.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Cell;
import pressweek.reports.listing.Column;
import pressweek.reports.listing.Kind;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.Widths;
import pressweek.reports.markup.Element;

/** A list as a table of a page. Columns share the width by what they hold. */
final class ListingTable {
  private static final int MOST = 26;

  private final Listing list;
  private final PlantClock clock;
  private final int group;

  private ListingTable(Listing list, PlantClock clock) {
    this.list = list;
    this.clock = clock;
    this.group = list.place(list.paper().group());
  }

  /** The table, or the sentence that stands for a list without rows. */
  static List<Element> content(Listing list, PlantClock clock) {
    if (list.rows().isEmpty()) {
      return List.of(Element.of("p").text(list.paper().whenEmpty()));
    }
    return List.of(new ListingTable(list, clock).table());
  }

  private Element table() {
    PageTable<List<Cell>> table = new PageTable<>("listing");
    if (list.paper().ticks()) {
      table.ticks("done");
    }
    List<String> headings = list.columns().stream().map(Column::heading).toList();
    List<Integer> wide = Widths.of(list, MOST, headings);
    List<Integer> widths = new ArrayList<>();
    for (int i = 0; i < list.columns().size(); i++) {
      if (i != group && !headings.get(i).isEmpty()) {
        column(table, i);
        widths.add(wide.get(i));
      }
    }
    table.widths(widths);
    if (group < 0) {
      table.rows(list.rows());
    } else {
      groups().forEach(table::group);
    }
    return table.element();
  }

  private void column(PageTable<List<Cell>> table, int place) {
    Column column = list.columns().get(place);
    if (column.kind() == Kind.NUMBER) {
      table.figure(column.heading(), r -> text(r.get(place)));
    } else {
      table.lines(column.heading(), r -> lines(r.get(place)));
    }
  }

  private Map<String, List<List<Cell>>> groups() {
    Map<String, List<List<Cell>>> groups = new LinkedHashMap<>();
    for (List<Cell> row : list.rows()) {
      groups.computeIfAbsent(text(row.get(group)), g -> new ArrayList<>()).add(row);
    }
    return groups;
  }

  private List<String> lines(Cell cell) {
    return cell instanceof Cell.Texts texts ? texts.texts() : List.of(text(cell));
  }

  private String text(Cell cell) {
    if (cell instanceof Cell.Text text) {
      return text.text();
    }
    if (cell instanceof Cell.Texts texts) {
      return String.join(", ", texts.texts());
    }
    if (cell instanceof Cell.Number number) {
      return number.value().toPlainString();
    }
    return clock.brief(PlantClock.minute(((Cell.Time) cell).at()));
  }
}
