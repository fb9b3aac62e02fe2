package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Unplaced;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.Cautions;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.wall.WeekWall;

/**
 * A plan as one page that needs nothing else: no other file, no network, and no script to be read.
 * Its policy (Content-Security-Policy) lets only its own style and script through.
 */
public final class PlanPage {
  private PlanPage() {}

  /**
   * The page of a plan.
   *
   * @param plan the plan
   * @param findings hard rules that an audit found broken, in words; empty for a plan that keeps
   *     them all
   */
  public static String html(Plan plan, List<String> findings) {
    PlanBook book = PlanBook.of(plan);
    Sheet sheet = new Sheet(book, findings);
    SummarySheet summary = new SummarySheet(book, findings);
    List<Element> cost = findings.isEmpty() ? new CostSheet(plan).content() : List.of();
    Element nav =
        Element.of("nav").attr("aria-label", "On this page").add(link("late", "Late lines"));
    Element main =
        Element.of("main").add(sheet.of("summary", summary.heading(), summary.content()));
    for (Part part : parts(book, cost)) {
      if (!part.content().isEmpty()) {
        nav.add(link(part.id(), part.heading()));
        main.add(sheet.of(part.id(), part.heading(), part.content()));
      }
    }
    Element page =
        Element.of("html")
            .attr("lang", "en")
            .add(head(plan, findings))
            .add(Element.of("body").add(nav).add(main).add(PageStyle.script()));
    return "<!DOCTYPE html>\n" + page + "\n";
  }

  private static Element head(Plan plan, List<String> findings) {
    Head head = plan.head();
    String plant = plan.problem().plant().name();
    String title =
        (findings.isEmpty() ? "" : "Breaks hard rules: ")
            + "Plan "
            + head.number()
            + (plant.isBlank() ? "" : ", " + plant);
    return Element.of("head")
        .add(Element.of("meta").attr("charset", "UTF-8"))
        .add(
            Element.of("meta")
                .attr("http-equiv", "Content-Security-Policy")
                .attr("content", PageStyle.policy()))
        .add(
            Element.of("meta")
                .attr("name", "viewport")
                .attr("content", "width=device-width, initial-scale=1"))
        .add(Element.of("meta").attr("name", "color-scheme").attr("content", "light dark"))
        .add("title", title)
        .add(PageStyle.style());
  }

  /** A part of the page: its place, its heading, and what is in it. */
  private record Part(String id, String heading, List<Element> content) {}

  private static List<Part> parts(PlanBook book, List<Element> cost) {
    return List.of(
        new Part("wall", "Week wall", List.of(WeekWall.of(book))),
        new Part("schedule", "Schedule by press", new ScheduleSheet(book).content()),
        new Part("pulls", "Pull list", new PullSheet(book).content()),
        new Part("changes", "Changes", new ChangeSheet(book).content()),
        new Part("unplaced", "Unplaced lines", unplaced(book.plan())),
        new Part("cost", "What it costs", cost),
        new Part("cautions", "Cautions", List.of(cautions(book))));
  }

  private static Element link(String id, String words) {
    return Element.of("a").attr("href", "#" + id).text(words);
  }

  private static List<Element> unplaced(Plan plan) {
    if (plan.unplaced().isEmpty()) {
      return List.of(Element.of("p").text("Every line is in the plan."));
    }
    List<Element> parts = new ArrayList<>();
    parts.add(
        new PageTable<Unplaced>("unplaced")
            .key("line", Unplaced::id)
            .text("item", Unplaced::item)
            .figure("pieces", u -> Integer.toString(u.pieces()))
            .text("reason", Unplaced::reason)
            .text("what would cure it", Unplaced::cure)
            .rows(plan.unplaced())
            .element());
    return parts;
  }

  private static Element cautions(PlanBook book) {
    Element list = Element.of("ul", "cautions");
    Cautions.of(book).forEach(c -> list.add("li", c));
    return list;
  }
}
