package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import pressweek.reports.markup.Element;
import pressweek.reports.markup.Pixels;

/**
 * A table of a page. Each cell bears the heading of its column, too, for narrow screens, where a
 * row is shown as a list of cells.
 *
 * @param <R> what a row is made from
 */
final class PageTable<R> {
  private static final int BOX_PERCENT = 4;

  private final List<Column<R>> columns = new ArrayList<>();
  private final List<Integer> widths = new ArrayList<>();
  private final List<Element> bodies = new ArrayList<>();
  private final Element table;

  private record Column<R>(String name, String headClass, Function<R, Element> cell) {}

  /** A table of a class, by which the style knows the widths of its columns. */
  PageTable(String cssClass) {
    this.table = Element.of("table", cssClass);
  }

  /** Sets the caption. */
  PageTable<R> caption(String caption) {
    table.add("caption", caption);
    return this;
  }

  /** Sets how wide each column is beside the others, boxes to tick left out. */
  PageTable<R> widths(List<Integer> characters) {
    widths.addAll(characters);
    return this;
  }

  /** Adds a column of text. */
  PageTable<R> text(String name, Function<R, String> cell) {
    return cell(name, r -> Element.of("td").text(cell.apply(r)));
  }

  /** Adds a column of ids by which a row is found. */
  PageTable<R> key(String name, Function<R, String> cell) {
    return cell(name, r -> Element.of("td", "key").text(cell.apply(r)));
  }

  /** Adds a column of figures, which stand to the right. */
  PageTable<R> figure(String name, Function<R, String> cell) {
    return column(name, "figure", r -> Element.of("td", "figure").text(cell.apply(r)));
  }

  /** Adds a column of texts of which each has a line of its own. */
  PageTable<R> lines(String name, Function<R, List<String>> cell) {
    return cell(
        name,
        r -> {
          Element td = Element.of("td");
          cell.apply(r).forEach(l -> td.add("div", l));
          return td;
        });
  }

  /** Adds a column with a text and, below it and less prominent, what goes with it. */
  PageTable<R> pair(String name, Function<R, String> cell, Function<R, String> below) {
    return cell(
        name,
        r -> {
          Element td = Element.of("td");
          String first = cell.apply(r);
          String second = below.apply(r);
          if (!first.isBlank()) {
            td.add("div", first);
          }
          return second.isBlank() ? td : td.add(Element.of("div", "muted").text(second));
        });
  }

  /** Adds a column of boxes to tick. */
  PageTable<R> ticks(String name) {
    return column(name, "tick", r -> Element.of("td", "tick").add(Element.of("span", "tickbox")));
  }

  /** Adds a column whose cells are made elsewhere. */
  PageTable<R> cell(String name, Function<R, Element> cell) {
    return column(name, "", cell);
  }

  private PageTable<R> column(String name, String headClass, Function<R, Element> cell) {
    columns.add(new Column<>(name, headClass, cell));
    return this;
  }

  /** Adds rows. */
  PageTable<R> rows(List<R> rows) {
    Element body = Element.of("tbody");
    rows.forEach(r -> body.add(row(r, "")));
    bodies.add(body);
    return this;
  }

  /** Adds rows under a heading of their own. */
  PageTable<R> group(String heading, List<R> rows) {
    return group(heading, rows, r -> "");
  }

  /** Adds rows under a heading of their own, to which links lead by an id each. */
  PageTable<R> group(String heading, List<R> rows, Function<R, String> id) {
    Element body = Element.of("tbody").add(heading(heading));
    rows.forEach(r -> body.add(row(r, id.apply(r))));
    bodies.add(body);
    return this;
  }

  private Element heading(String heading) {
    return Element.of("tr", "heading")
        .add(
            Element.of("th", "group")
                .attr("scope", "rowgroup")
                .attr("colspan", Integer.toString(columns.size()))
                .text(heading));
  }

  private Element row(R row, String id) {
    Element tr = Element.of("tr");
    if (!id.isEmpty()) {
      tr.attr("id", id).attr("tabindex", "-1");
    }
    columns.forEach(c -> tr.add(c.cell().apply(row).attr("data-name", c.name())));
    return tr;
  }

  /** The table. */
  Element element() {
    Element head = Element.of("tr");
    for (Column<R> column : columns) {
      head.add(Element.of("th", column.headClass()).attr("scope", "col").text(column.name()));
    }
    if (!widths.isEmpty()) {
      table.add(columnWidths());
    }
    return table.add(Element.of("thead").add(head)).addAll(bodies);
  }

  private Element columnWidths() {
    Element group = Element.of("colgroup");
    int all = widths.stream().mapToInt(Integer::intValue).sum();
    int boxes = columns.size() - widths.size();
    for (int i = 0; i < boxes; i++) {
      group.add(Element.of("col").attr("width", BOX_PERCENT + "%"));
    }
    int share = 100 - boxes * BOX_PERCENT;
    for (int width : widths) {
      group.add(Element.of("col").attr("width", Pixels.text((double) share * width / all) + "%"));
    }
    return group;
  }
}
