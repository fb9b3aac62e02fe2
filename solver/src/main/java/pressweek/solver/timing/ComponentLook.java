package pressweek.solver.timing;

import java.util.StringJoiner;

/** When the components of a job are there; changes nothing. */
final class ComponentLook {
  private final WeekTables week;
  private final JobTable jobs;
  private final ComponentStock stock;

  ComponentLook(WeekTables week, ComponentStock stock) {
    this.week = week;
    this.jobs = week.jobs;
    this.stock = stock;
  }

  /**
   * The first start of a run, from a time on where lots expire, at which its components are there.
   */
  int ready(int option, int job, boolean exchanged, int from) {
    int ready = 0;
    for (int t = jobs.firstTake[option]; t < jobs.firstTake[option + 1]; t++) {
      int component = jobs.takeComponent[t];
      if (!jobs.expiring[option] || !week.stock.expires(component)) {
        int at = stock.ready(component, pieces(t, exchanged));
        if (at > 0) {
          ready = Math.max(ready, at >= Spans.FAR ? Spans.FAR : at + week.insertLead);
        }
      }
    }
    return jobs.expiring[option]
        ? beforeExpiry(option, job, exchanged, Math.max(ready, from))
        : ready;
  }

  /** The first start from a time on at which all components with a lot that expires are there. */
  private int beforeExpiry(int option, int job, boolean exchanged, int from) {
    int start = from;
    int before = -1;
    while (before != start && start < Spans.FAR) {
      before = start;
      for (int t = jobs.firstTake[option]; t < jobs.firstTake[option + 1]; t++) {
        if (start < Spans.FAR && week.stock.expires(jobs.takeComponent[t])) {
          start = stock.start(jobs.takeComponent[t], pieces(t, exchanged), job, start);
        }
      }
    }
    return start;
  }

  /** Pieces of a take, with start-up pieces after an exchange. */
  int pieces(int take, boolean exchanged) {
    return jobs.takePieces[take] + (exchanged ? jobs.takeStartup[take] : 0);
  }

  /** Components that are missing for a run found for a job: those never there, else those late. */
  String missing(int job, Look look, int until) {
    String never = until < Spans.FAR ? "" : names(job, look, Spans.FAR - 1);
    return never.isEmpty() ? names(job, look, look.runStart) : never;
  }

  private String names(int job, Look look, int start) {
    StringJoiner names = new StringJoiner("|");
    int option = look.option;
    for (int t = jobs.firstTake[option]; t < jobs.firstTake[option + 1]; t++) {
      if (isMissing(t, job, look, start)) {
        names.add(week.stock.name(jobs.takeComponent[t]));
      }
    }
    return names.toString();
  }

  private boolean isMissing(int take, int job, Look look, int start) {
    int component = jobs.takeComponent[take];
    int pieces = pieces(take, look.exchanged);
    if (week.stock.expires(component)) {
      return stock.start(component, pieces, job, look.runStart) > start;
    }
    int at = stock.ready(component, pieces);
    return at > 0 && (at >= Spans.FAR ? at : at + week.insertLead) > start;
  }
}
