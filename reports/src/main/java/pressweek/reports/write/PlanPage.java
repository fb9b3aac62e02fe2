package pressweek.reports.write;

import java.util.List;
import pressweek.data.plan.Plan;
import pressweek.reports.markup.Element;

/**
 * A plan as one page that needs nothing else: no other file, no network, and no script to be read.
 * Its policy (Content-Security-Policy) lets only its own style and script through.
 */
public final class PlanPage {
  private PlanPage() {}

  /**
   * The page of a plan that replaces none.
   *
   * @param plan the plan
   * @param findings hard rules that an audit found broken, in words; empty for a plan that keeps
   *     them all
   */
  public static String html(Plan plan, List<String> findings) {
    Edition edition = Edition.first(plan, findings);
    return html(edition, PlanParts.lists(edition, PlanLists.of(edition)));
  }

  /** The page of a plan with its lists. */
  static String html(Edition edition, List<Part> lists) {
    Sheet sheet = new Sheet(edition);
    SummarySheet summary = new SummarySheet(edition.book(), edition.findings());
    Element nav =
        Element.of("nav").attr("aria-label", "On this page").add(link("late", "Late lines"));
    Element main =
        Element.of("main").add(sheet.of("summary", summary.heading(), summary.content()));
    for (Part part : PlanParts.page(edition, lists)) {
      if (!part.content().isEmpty()) {
        nav.add(link(part.id(), part.heading()));
        main.add(sheet.of(part));
      }
    }
    return new PageFrame(edition, "").html(Element.of("body").add(nav).add(main));
  }

  private static Element link(String id, String words) {
    return Element.of("a").attr("href", "#" + id).text(words);
  }
}
