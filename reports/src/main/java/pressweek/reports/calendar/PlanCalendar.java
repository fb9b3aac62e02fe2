package pressweek.reports.calendar;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import pressweek.data.plan.Head;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.reports.changes.ChangeList;
import pressweek.reports.changes.ChangeReport;
import pressweek.reports.changes.ChangeRow;
import pressweek.reports.hours.Minutes;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.ScheduleList;

/**
 * The plan as calendars by RFC 5545 (iCalendar). An entry keeps its UID as long as it is for the
 * same order line, so that a calendar that takes the next plan moves it; SEQUENCE is the time at
 * which the plan was made in minutes since 1970, which grows with each plan.
 */
public final class PlanCalendar {
  private final PlanBook book;
  private final Map<String, Integer> seen = new HashMap<>();

  private PlanCalendar(PlanBook book) {
    this.book = book;
  }

  /** An entry a run. */
  public static String presses(PlanBook book) {
    return new PlanCalendar(book).runs();
  }

  /** An entry a change or dismount. */
  public static String setters(PlanBook book) {
    return new PlanCalendar(book).changes();
  }

  private String runs() {
    return calendar("Presses", book.plan().runs().stream().map(this::ofRun).toList());
  }

  private Appointment ofRun(Run run) {
    Job job = book.job(run);
    int pieces = job.quantity().good();
    List<String> details = new ArrayList<>();
    details.add("Run " + run.id() + ", line " + job.id());
    details.add("Mold " + run.mold() + ", " + (job.resin() + " " + job.colour()).trim());
    details.add("Due " + book.clock().moment(job.deadline().dueMin()));
    int late = book.lateMin(run);
    details.add(late == 0 ? "" : Minutes.words(late) + " late");
    details.add(job.line().note());
    details.add(ScheduleList.CAUTION);
    return new Appointment(
        uid("run", run.job()),
        new Span(run.startMin(), run.endMin()),
        run.press(),
        run.press() + ": " + job.item().code() + ", " + pieces + " pieces",
        details);
  }

  private String changes() {
    return calendar("Setters", ChangeReport.rows(book).stream().map(this::ofChange).toList());
  }

  private Appointment ofChange(ChangeRow row) {
    List<String> details = new ArrayList<>();
    details.add(fromTo("Mold", row.moldOut(), row.moldIn()));
    details.add(fromTo("Tooling", row.toolingOut(), row.toolingIn()));
    details.add(fromTo("Material", row.materialOut(), row.materialIn()));
    details.add(row.stays().isEmpty() ? "" : "Stays: " + String.join(", ", row.stays()));
    details.add(Minutes.hours(row.minutes()) + " of work");
    details.add(book.run(row.run()).map(r -> "For run " + r.id() + ", line " + r.job()).orElse(""));
    details.add(ChangeList.CAUTION);
    String job = book.run(row.run()).map(Run::job).orElse("");
    return new Appointment(
        job.isEmpty()
            ? uid("dismount", row.press() + "\n" + row.setups().from().mold())
            : uid("change", job),
        row.span(),
        row.press(),
        row.press() + ": " + String.join(", ", row.kinds()),
        details);
  }

  private static String fromTo(String what, String out, String in) {
    if (out.isEmpty() && in.isEmpty()) {
      return "";
    }
    return what + (out.isEmpty() ? "" : " out " + out) + (in.isEmpty() ? "" : " in " + in);
  }

  /**
   * A UID (RFC 7986, section 5.3: a UUID) by what the entry is for; the second for the same thing
   * has another.
   */
  private String uid(String kind, String what) {
    String name = String.join("\n", book.plan().problem().plant().name(), kind, what);
    int nth = seen.merge(name, 1, Integer::sum);
    return UUID.nameUUIDFromBytes((name + "\n" + nth).getBytes(StandardCharsets.UTF_8)).toString();
  }

  private String calendar(String name, List<Appointment> entries) {
    Head head = book.plan().head();
    CalendarText text = new CalendarText();
    text.line("BEGIN", "VCALENDAR")
        .line("VERSION", "2.0")
        .line("PRODID", "-//Pressweek//Pressweek//EN")
        .text("NAME", name + ", plan " + head.number());
    entries.forEach(e -> entry(text, e));
    return text.line("END", "VCALENDAR").toString();
  }

  private void entry(CalendarText text, Appointment entry) {
    Head head = book.plan().head();
    text.line("BEGIN", "VEVENT")
        .line("UID", entry.uid())
        .time("DTSTAMP", head.madeMin())
        .line("SEQUENCE", Integer.toString(Math.max(0, head.madeMin())))
        .time("DTSTART", entry.span().fromMin());
    if (entry.span().minutes() > 0) {
      text.time("DTEND", entry.span().toMin());
    }
    String plan =
        "Plan "
            + head.number()
            + (head.replaces().isEmpty() ? "" : ", replaces " + head.replaces());
    text.text("SUMMARY", entry.summary())
        .text("LOCATION", entry.press())
        .text(
            "DESCRIPTION", entry.description().isEmpty() ? plan : entry.description() + "\n" + plan)
        .line("END", "VEVENT");
  }
}
