package pressweek.reports.kits;

import pressweek.data.plan.Pull;
import pressweek.data.problem.Job;
import pressweek.data.problem.Resin;
import pressweek.reports.schedule.PlanBook;

/** What a part of a kit is. */
public enum PartKind {
  INSERT("insert"),
  TIP("tip"),
  GAUGE("gauge"),
  RESIN("resin"),
  MASTERBATCH("masterbatch"),
  /** Cartons, labels and whatever else goes with the parts. */
  PACKAGING("packaging and labels");

  private final String words;

  PartKind(String words) {
    this.words = words;
  }

  /** What a person calls it. */
  public String words() {
    return words;
  }

  /** True for what is weighed and counted in grams. */
  public boolean weighed() {
    return this == RESIN || this == MASTERBATCH;
  }

  /** What a pull for a job brings. */
  public static PartKind of(PlanBook book, Job job, Pull pull) {
    String what = pull.insert();
    if (what.equals(job.resin()) || isGrade(book, job, what)) {
      return RESIN;
    }
    if (book.kitting().recipes().stream().anyMatch(r -> r.masterbatch().equals(what))) {
      return MASTERBATCH;
    }
    if (book.kitting().tips().stream().anyMatch(t -> t.id().equals(what))) {
      return TIP;
    }
    return book.insert(what).isPresent() ? INSERT : PACKAGING;
  }

  private static boolean isGrade(PlanBook book, Job job, String what) {
    return book.plan().problem().materials().resins().stream()
        .filter(r -> r.id().equals(job.resin()))
        .map(Resin::grade)
        .anyMatch(what::equals);
  }
}
