package pressweek.reports.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Job;
import pressweek.data.problem.Press;
import pressweek.data.problem.Setup;
import pressweek.reports.hours.Span;

/** The runs of one press of a generated week, laid one after the other into its working time. */
final class PressLine {
  private static final String[] RESINS = {"PP", "ABS", "PA66-GF30", "POM"};
  private static final String[] COLOURS = {"BLK", "SGR", "YEL", "LGR", "BLU", "GRN", "IVO", "NAT"};
  private static final String[] INSERTS = {
    "S0825", "S5616", "T5618", "B0600", "B1420", "L1000", "X0012"
  };

  private final Press press;
  private final List<Span> working;
  private final Random random;
  private final List<Run> runs = new ArrayList<>();
  private final List<Job> jobs = new ArrayList<>();
  private Setup setup;
  private int free = SampleWeek.START;

  PressLine(Press press, List<Span> working, Random random) {
    this.press = press;
    this.working = working;
    this.random = random;
    this.setup = new Setup("M" + press.id() + "-1", "", "PP", "BLK");
  }

  List<Run> runs() {
    return runs;
  }

  List<Job> jobs() {
    return jobs;
  }

  /** Adds a run of some working minutes. */
  void add(int number, int minutes) {
    Setup next = next();
    boolean first = runs.isEmpty() && random.nextBoolean();
    Change change = first ? none(next) : change(next);
    List<Wait> waits = new ArrayList<>();
    int start = first ? free : change.endMin();
    if (!first && random.nextInt(7) == 0) {
      int later = advance(start, 45 + random.nextInt(120));
      waits.add(new Wait(Cause.INSERTS, "S0825", start, later));
      start = later;
    }
    start = advance(start, 0);
    int end = advance(start, minutes);
    String insert = INSERTS[random.nextInt(INSERTS.length)];
    int due = due(end);
    Job job =
        SampleJobs.job(
            Integer.toString(4_700 + number / 2),
            Integer.toString(number % 2 + 1),
            new SampleJobs.Choice(
                press.id(), next.mold(), next.resin(), next.colour(), insert, minutes * 4, due));
    jobs.add(job);
    List<Charge> charges =
        end <= due
            ? List.of()
            : List.of(new Charge(Rule.LATE, 16_000_000, "1 cut-off missed and the days late"));
    runs.add(
        new Run(
            String.format(Locale.ROOT, "R%03d", number),
            job.id(),
            press.id(),
            next.mold(),
            runs.size() + 1,
            change,
            start,
            end,
            end,
            waits,
            charges));
    setup = next;
    free = end;
  }

  private int due(int end) {
    int day = (end - SampleWeek.at("2026-11-30T15:00")) / 1440;
    int early = random.nextInt(9) == 0 ? -1 : random.nextInt(4) + 1;
    return SampleWeek.at("2026-11-30T15:00") + (day + early) * 1440;
  }

  private Setup next() {
    String mold =
        random.nextInt(3) == 0 ? "M" + press.id() + "-" + (1 + random.nextInt(4)) : setup.mold();
    String resin = random.nextInt(6) == 0 ? RESINS[random.nextInt(4)] : setup.resin();
    return new Setup(mold, "", resin, COLOURS[random.nextInt(COLOURS.length)]);
  }

  private Change none(Setup next) {
    return new Change(next, next, List.of(), free, free, 0, 0);
  }

  private Change change(Setup next) {
    List<ChangeKind> kinds = new ArrayList<>();
    int minutes = 0;
    if (!next.mold().equals(setup.mold())) {
      kinds.add(ChangeKind.MOLD);
      minutes += 60;
    }
    if (!next.resin().equals(setup.resin())) {
      kinds.add(ChangeKind.RESIN);
      minutes += 40;
    }
    if (!next.colour().equals(setup.colour())) {
      kinds.add(ChangeKind.COLOUR);
      minutes += 10 + random.nextInt(40);
    }
    minutes += kinds.isEmpty() ? 0 : 10;
    int start = advance(free, 0);
    return new Change(
        setup, next, kinds, start, advance(start, minutes), minutes, kinds.isEmpty() ? 0 : 375);
  }

  /** The minute at which so many working minutes after a minute have passed. */
  private int advance(int from, int minutes) {
    int left = minutes;
    for (Span span : working) {
      int start = Math.max(from, span.fromMin());
      if (start >= span.toMin()) {
        continue;
      }
      if (start + left <= span.toMin()) {
        return start + left;
      }
      left -= span.toMin() - start;
    }
    return Math.max(from, working.get(working.size() - 1).toMin()) + left;
  }
}
