package pressweek.reports.write;

import java.util.List;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.reports.handover.Handover;
import pressweek.reports.listing.Listing;
import pressweek.reports.schedule.PlanBook;

/**
 * A plan as it is given out.
 *
 * @param book the plan
 * @param handover what it changes against the plan that it replaces
 * @param findings hard rules that an audit found broken, in words; empty for a plan that keeps them
 *     all
 * @param writtenMin when it is written, minutes since 1970 UTC
 * @param more lists beside those that every plan has, such as what moved
 */
public record Edition(
    PlanBook book, Handover handover, List<String> findings, int writtenMin, List<Listing> more) {
  public Edition {
    findings = List.copyOf(findings);
    more = List.copyOf(more);
  }

  /** A plan with the lists that every plan has. */
  public Edition(PlanBook book, Handover handover, List<String> findings, int writtenMin) {
    this(book, handover, findings, writtenMin, List.of());
  }

  /** A plan that replaces none, written when it was made. */
  public static Edition first(Plan plan, List<String> findings) {
    return new Edition(PlanBook.of(plan), Handover.none(), findings, plan.head().madeMin());
  }

  Plan plan() {
    return book.plan();
  }

  /** True when an audit found no hard rule broken. */
  boolean sound() {
    return findings.isEmpty();
  }

  /** Who the plan is, in a line: {@code Plan 2026-W49/3, replaces 2026-W49/2, made Mon 05:40}. */
  String identity() {
    Head head = plan().head();
    String replaces = head.replaces().isEmpty() ? "" : ", replaces " + head.replaces();
    return "Plan " + head.number() + replaces + ", made " + book.clock().moment(head.madeMin());
  }
}
