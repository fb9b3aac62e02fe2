package pressweek.reports.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.declared.Declared;
import pressweek.data.declared.Needs;
import pressweek.data.declared.Subject;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Kitting;
import pressweek.data.problem.LotPaper;
import pressweek.data.problem.Recipe;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Tip;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.ScheduleReport;
import pressweek.reports.trace.TraceRow.Source;

/**
 * Which lots go into every run that asks for declarations, in order of time: a row a material, lot
 * and need.
 */
public final class TraceReport {
  private final PlanBook book;
  private final Kitting kitting;
  private final Declared declared;
  private final Map<String, List<Pull>> pulls = new HashMap<>();

  private TraceReport(PlanBook book) {
    this.book = book;
    this.kitting = book.kitting();
    this.declared = new Declared(kitting.declarations());
    book.plan().pulls().forEach(p -> pulls.computeIfAbsent(p.run(), r -> new ArrayList<>()).add(p));
  }

  /** The rows. */
  public static List<TraceRow> rows(PlanBook book) {
    TraceReport report = new TraceReport(book);
    return book.plan().runs().stream()
        .sorted(Comparator.comparingInt(Run::startMin))
        .flatMap(run -> report.rows(run).stream())
        .toList();
  }

  private List<TraceRow> rows(Run run) {
    Job job = book.job(run);
    Set<String> needs = Needs.of(job);
    int start = book.plan().problem().plant().hours().startMin();
    int atMin = Math.max(start, job.deadline().dueMin());
    List<TraceRow> rows = new ArrayList<>();
    for (Subject subject : needs.isEmpty() ? List.<Subject>of() : subjects(run, job)) {
      for (Source source : sources(run, job, subject)) {
        for (String need : needs) {
          rows.add(
              new TraceRow(run, job, need, subject, source, declared.valid(subject, need, atMin)));
        }
      }
    }
    return rows;
  }

  private List<Subject> subjects(Run run, Job job) {
    Set<String> inserts = new LinkedHashSet<>(ScheduleReport.row(book, run).inserts());
    inserts.removeIf(id -> book.insert(id).isEmpty());
    Set<String> having = new LinkedHashSet<>(inserts);
    having.add(job.item().code());
    List<Subject> metal = new ArrayList<>(inserts.stream().map(Subject::insert).toList());
    kitting.tips().stream()
        .filter(tip -> having.contains(tip.of()))
        .map(Tip::id)
        .distinct()
        .forEach(tip -> metal.add(Subject.tip(tip)));
    return Subject.of(Subject.resin(job.resin(), grade(job)), job.colour(), metal);
  }

  private String grade(Job job) {
    return book.plan().problem().materials().resins().stream()
        .filter(r -> r.id().equals(job.resin()))
        .map(Resin::grade)
        .findFirst()
        .orElse("");
  }

  /** Under which ids lots of a material are kept. */
  private Set<String> stocked(Job job, Subject subject) {
    Set<String> ids = new LinkedHashSet<>();
    switch (subject.kind()) {
      case INSERT, TIP -> ids.add(subject.id());
      case RESIN -> ids.addAll(List.of(job.resin(), grade(job)));
      case COLOUR ->
          kitting.recipes().stream()
              .filter(r -> r.colour().equals(job.colour()))
              .filter(r -> r.resin().isEmpty() || r.resin().equals(job.resin()))
              .map(Recipe::masterbatch)
              .forEach(ids::add);
    }
    ids.remove("");
    return ids;
  }

  private List<Source> sources(Run run, Job job, Subject subject) {
    Set<String> ids = stocked(job, subject);
    List<Source> sources = new ArrayList<>();
    for (Pull pull : pulls.getOrDefault(run.id(), List.of())) {
      if (ids.contains(pull.insert())) {
        sources.add(
            new Source(
                pull.lot(),
                pull.bin(),
                Optional.of(pull.pieces()),
                paper(pull.insert(), pull.lot()),
                note(pull, !sources.isEmpty())));
      }
    }
    return sources.isEmpty()
        ? List.of(new Source("", "", Optional.empty(), "", listed(ids)))
        : sources;
  }

  /** Parts from another lot are a lot of their own, so that neither hides the other. */
  private static String note(Pull pull, boolean another) {
    if (pull.lot().isEmpty()) {
      return "write down the lot that is brought";
    }
    return another ? "another lot: keep the parts made from it apart" : "";
  }

  private String paper(String what, String lot) {
    return kitting.lotPapers().stream()
        .filter(p -> p.what().equals(what) && p.lot().equals(lot))
        .map(LotPaper::certificate)
        .findFirst()
        .orElse("");
  }

  private String listed(Set<String> ids) {
    List<String> lots =
        kitting.resinLots().stream()
            .filter(lot -> ids.contains(lot.what()))
            .map(lot -> lot.id())
            .distinct()
            .toList();
    String write = "write down the lot that is loaded";
    return lots.isEmpty() ? write : write + "; at hand: " + String.join(", ", lots);
  }
}
