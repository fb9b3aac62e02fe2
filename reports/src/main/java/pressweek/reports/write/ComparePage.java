package pressweek.reports.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import pressweek.reports.compare.Certainty;
import pressweek.reports.compare.CompareLists;
import pressweek.reports.compare.ComparePictures;
import pressweek.reports.compare.CompareText;
import pressweek.reports.compare.Figure;
import pressweek.reports.compare.LineMove;
import pressweek.reports.compare.ScenarioSentence;
import pressweek.reports.compare.SideBySide;
import pressweek.reports.compare.Tried;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.wall.WeekWall;

/** Scenarios side by side as pages: the whole, and one sheet for a meeting. */
final class ComparePage {
  private final SideBySide all;
  private final List<Tried> shown;

  private ComparePage(SideBySide all) {
    this.all = all;
    this.shown = all.shown();
  }

  /** The whole page. */
  static String html(SideBySide all) {
    return new ComparePage(all).whole();
  }

  /** One sheet of paper for a meeting. */
  static String meeting(SideBySide all) {
    return new ComparePage(all).sheet();
  }

  private String whole() {
    Element nav = Element.of("nav").attr("aria-label", "On this page");
    Element main = Element.of("main").add(section("summary", heading(), first()));
    for (Part part : parts()) {
      if (!part.content().isEmpty()) {
        nav.add(Element.of("a").attr("href", "#" + part.id()).text(part.heading()));
        main.add(section(part.id(), List.of(h2(part.heading())), part.content()));
      }
    }
    nav.add(Element.of("a").attr("href", "meeting.html").text("Sheet for a meeting"));
    return CompareFrame.html(
        all, "Scenarios side by side", Element.of("body", "compare").add(nav).add(main));
  }

  private String sheet() {
    List<Element> content = new ArrayList<>(sentences());
    content.add(table(CompareText.shown(all)));
    if (all.money().isPresent() && !shown.isEmpty()) {
      content.add(ComparePictures.cost(shown));
    }
    content.add(Element.of("p", "method").text(method()));
    Element main = Element.of("main").add(section("summary", heading(), content));
    return CompareFrame.html(
        all, "Scenarios, one sheet", Element.of("body", "compare meeting").add(main));
  }

  private Element section(String id, List<Element> headings, List<Element> content) {
    Element body = Element.of("div", "sheetbody").addAll(headings).addAll(content);
    return CompareFrame.sheet(all, id, body);
  }

  private static Element h2(String text) {
    return Element.of("h2").text(text);
  }

  private List<Element> heading() {
    String made = all.clock().map(c -> "made " + c.moment(all.madeMin())).orElse("");
    String stopped = all.stopped() ? ", stopped early" : "";
    return List.of(
        Element.of("h1").text("Scenarios side by side"),
        Element.of("p", "identity")
            .text(all.plant() + (all.plant().isBlank() ? "" : ", ") + made + stopped));
  }

  private List<Element> first() {
    List<Element> content = new ArrayList<>(sentences());
    content.add(Element.of("p", "method").text(all.effort() + " " + method()));
    return content;
  }

  private String method() {
    return Certainty.method(all.seeds());
  }

  private List<Element> sentences() {
    List<Element> parts = new ArrayList<>();
    parts.add(Element.of("p", "lead").text(ScenarioSentence.base(all)));
    Element list = Element.of("ul", "sentences");
    for (Tried tried : all.scenarios()) {
      Element item = Element.of("li").text(ScenarioSentence.of(all, tried));
      List<String> more = new ArrayList<>();
      if (!tried.words().isBlank()) {
        more.add(tried.words());
      }
      more.addAll(tried.notes());
      if (!more.isEmpty()) {
        item.add(Element.of("div", "muted").text(String.join(" ", more)));
      }
      list.add(item);
    }
    parts.add(list);
    for (Tried tried : all.all()) {
      if (tried.broken() > 0) {
        String plans = Headline.counted(tried.broken(), "plan");
        parts.add(
            Element.of("div", "banner")
                .attr("role", "alert")
                .text(
                    tried.name()
                        + ": the audit rejected "
                        + plans
                        + " for breaking hard rules. No figure here comes from them."));
      }
    }
    return parts;
  }

  private List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    if (shown.isEmpty()) {
      return parts;
    }
    parts.add(new Part("figures", "Figures", "", List.of(table(all.figures()), about())));
    if (all.money().isPresent()) {
      String currency = all.money().map(r -> r.currency()).orElse("");
      parts.add(
          new Part(
              "cost", "Avoidable cost, " + currency, "", List.of(ComparePictures.cost(shown))));
    }
    parts.add(new Part("load", "Load of each press by day", "", load()));
    parts.add(new Part("lines", "Lines that change sides", "", lines()));
    parts.add(new Part("walls", "The weeks on one axis", "", walls()));
    parts.add(new Part("plans", "Every plan", "", List.of(plans())));
    return parts;
  }

  private static Element about() {
    return Element.of("p", "muted")
        .text(
            "Each figure is of the cheapest plan of a scenario; in brackets the least and the most"
                + " over its seeds. Availability, effectiveness, quality ratio, OEE, NEE,"
                + " allocation efficiency and setup ratio are the planned parts of the indicators"
                + " of ISO 22400-2.");
  }

  private Element table(List<Figure> figures) {
    PageTable<Figure> table =
        new PageTable<Figure>("figures").text("figure", f -> f.words() + unit(f));
    for (Tried tried : shown) {
      boolean base = tried.equals(all.base());
      table.cell(
          tried.name(),
          f -> {
            Element cell = Element.of("td", "figure").add("div", range(tried, f));
            return base ? cell : cell.add(Element.of("div", "muted").text(difference(tried, f)));
          });
    }
    return table.rows(figures).element();
  }

  private String unit(Figure figure) {
    String unit =
        figure.unit() == Figure.Unit.MONEY
            ? all.money().map(r -> r.currency()).orElse("")
            : figure.unit().symbol();
    return unit.isEmpty() ? "" : ", " + unit;
  }

  private static String range(Tried tried, Figure figure) {
    List<Double> values = tried.values(figure, tried);
    String best = tried.best().map(p -> figure.text(figure.of(p.figures()))).orElse("");
    String least = figure.text(Collections.min(values));
    String most = figure.text(Collections.max(values));
    return least.equals(most) ? best : best + " (" + least + " to " + most + ")";
  }

  private String difference(Tried tried, Figure figure) {
    Optional<Tried.Planned> base = all.base().best();
    Optional<Tried.Planned> own = tried.best();
    if (base.isEmpty() || own.isEmpty()) {
      return "";
    }
    double more = figure.of(own.get().figures()) - figure.of(base.get().figures());
    return switch (tried.certainty(figure, all.base())) {
      case SAME -> "the same";
      case SURE -> figure.difference(more) + ", sure";
      case WITHIN -> figure.difference(more) + ", not sure";
      case UNTOLD -> figure.difference(more);
    };
  }

  private List<Element> load() {
    List<Element> parts = new ArrayList<>();
    parts.add(
        Element.of("p", "muted")
            .text(
                "Share of the working time of a press that its runs and changes take. The fine"
                    + " line at the right of a cell is all of it. From top to bottom:"));
    parts.addAll(ComparePictures.load(shown));
    return parts;
  }

  private List<Element> lines() {
    List<Element> parts = new ArrayList<>();
    for (Tried tried : all.scenarios()) {
      List<LineMove> moves = CompareLists.moves(all.base(), tried);
      if (tried.best().isPresent() && all.base().best().isPresent()) {
        long better = moves.stream().filter(LineMove::better).count();
        parts.add(Element.of("h3").text(tried.name()));
        parts.add(
            Element.of("p")
                .text(
                    moves.isEmpty()
                        ? "No line changes sides."
                        : better
                            + " better, "
                            + (moves.size() - better)
                            + " worse. Ring: as it"
                            + " stands; dot: in the scenario."));
        if (!moves.isEmpty()) {
          parts.add(ComparePictures.lines(moves));
        }
      }
    }
    return parts;
  }

  private List<Element> walls() {
    List<PlanBook> books = new ArrayList<>();
    List<String> pages = new ArrayList<>();
    for (Tried tried : shown) {
      tried.best().ifPresent(p -> books.add(p.book()));
      pages.add(tried.folder() + "/index.html");
    }
    List<Element> walls = WeekWall.aligned(books, pages);
    List<Element> parts = new ArrayList<>();
    parts.add(WeekWall.hatchings());
    for (int i = 0; i < walls.size(); i++) {
      Element box = Element.of("div", "wallbox").add(Element.of("h3").text(shown.get(i).name()));
      parts.add(box.add(walls.get(i)));
    }
    parts.add(WeekWall.legend());
    return parts;
  }

  private record Row(Tried tried, Tried.Planned planned) {}

  private Element plans() {
    List<Row> rows = new ArrayList<>();
    all.all().forEach(t -> t.plans().forEach(p -> rows.add(new Row(t, p))));
    PageTable<Row> table =
        new PageTable<Row>("narrow")
            .text("scenario", r -> r.tried().name())
            .figure("seed", r -> Long.toString(r.planned().seed()))
            .text("audit", r -> r.planned().sound() ? "passed" : "rejected")
            .figure("on time", r -> sound(r, Figure.ON_TIME))
            .figure("days late", r -> sound(r, Figure.LATE_DAYS));
    all.money()
        .ifPresent(
            m -> table.figure("avoidable cost, " + m.currency(), r -> sound(r, Figure.COST)));
    return table
        .text("", r -> r.tried().best().filter(r.planned()::equals).isPresent() ? "shown" : "")
        .rows(rows)
        .element();
  }

  private static String sound(Row row, Figure figure) {
    return row.planned().sound() ? figure.text(figure.of(row.planned().figures())) : "";
  }
}
