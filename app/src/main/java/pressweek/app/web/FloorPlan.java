package pressweek.app.web;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Plan;
import pressweek.reports.handover.Handover;
import pressweek.reports.listing.Listing;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.write.Edition;
import pressweek.reports.write.PlanFiles;
import pressweek.reports.write.PlanLists;

/**
 * A plan that the floor's pages show, with its lists and papers, each made when first asked for.
 */
final class FloorPlan {
  private final PlanBook book;
  private final boolean draft;
  private final Edition edition;
  private List<Listing> lists = List.of();
  private Map<String, byte[]> papers = Map.of();

  /**
   * A plan to show.
   *
   * @param plan the plan
   * @param draft whether nobody has given it out
   * @param handover what it changes against the plan that it replaces
   * @param findings hard rules that it breaks, which only a draft may
   * @param writtenMin when its papers are written, minutes since 1970 UTC
   */
  FloorPlan(Plan plan, boolean draft, Handover handover, List<String> findings, int writtenMin) {
    this.draft = draft;
    book = PlanBook.of(plan);
    edition = new Edition(book, handover, findings, writtenMin);
  }

  PlanBook book() {
    return book;
  }

  /** Whether nobody has given it out. */
  boolean draft() {
    return draft;
  }

  String number() {
    return book.plan().head().number();
  }

  String replaces() {
    return book.plan().head().replaces();
  }

  /** Every list of it. */
  synchronized List<Listing> lists() {
    if (lists.isEmpty()) {
      lists = PlanLists.of(edition);
    }
    return lists;
  }

  /** Everything that it is written as, by its path. */
  Map<String, byte[]> papers() {
    synchronized (edition) {
      if (papers.isEmpty()) {
        Map<String, byte[]> all = new LinkedHashMap<>(PlanFiles.of(edition));
        all.put("plan.json", PlanFile.text(book.plan()).getBytes(StandardCharsets.UTF_8));
        papers = all;
      }
      return papers;
    }
  }
}
