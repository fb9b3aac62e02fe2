package pressweek.reports.sample;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Job;
import pressweek.data.problem.NotChecked;
import pressweek.data.problem.Person;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Unplaced;
import pressweek.reports.hours.ShiftBook;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;

/**
 * Generated plans of any size for the tests. They are laid out press by press; what presses share
 * is not kept.
 */
public final class SamplePlan {
  private final List<Press> presses;
  private final List<Run> runs = new ArrayList<>();
  private final List<Job> jobs = new ArrayList<>();
  private final List<Downtime> downtime = new ArrayList<>();

  private SamplePlan(int presses) {
    this.presses = SampleWeek.presses(presses);
  }

  /** A week with so many presses and runs; the same numbers give the same week. */
  public static Plan of(int presses, int runs) {
    SamplePlan sample = new SamplePlan(presses);
    sample.lay(runs);
    return sample.plan();
  }

  /** A week without a single order line. */
  public static Plan empty() {
    return of(2, 0);
  }

  private void lay(int count) {
    Random random = new Random(7);
    ShiftBook shifts =
        ShiftBook.of(SampleWeek.hours(), new Span(SampleWeek.START, SampleWeek.END + 7 * 24 * 60));
    if (presses.size() > 3) {
      downtime.add(
          new Downtime(
              Downtime.Kind.PRESS,
              presses.get(3).id(),
              SampleWeek.at("2026-12-02T08:00"),
              SampleWeek.at("2026-12-02T20:00"),
              "clamp seals renewed"));
    }
    List<PressLine> lines = new ArrayList<>();
    for (Press press : presses) {
      List<Span> open = shifts.ofCalendar(press.calendar()).stream().map(ShiftSpan::span).toList();
      List<Span> away =
          downtime.stream()
              .filter(d -> d.id().equals(press.id()))
              .map(d -> new Span(d.fromMin(), d.toMin()))
              .toList();
      lines.add(new PressLine(press, Span.without(open, away), random));
    }
    int each = Math.max(1, (count + presses.size() - 1) / presses.size());
    for (int i = 0; i < count; i++) {
      int room = 4_300 / each;
      lines.get(i % lines.size()).add(i + 1, Math.max(20, room / 3 + random.nextInt(room)));
    }
    lines.forEach(l -> runs.addAll(l.runs()));
    lines.forEach(l -> jobs.addAll(l.jobs()));
  }

  private Plan plan() {
    return new Plan(
        new Head(
            "2026-W49/3",
            "2026-W49/2",
            SampleWeek.at("2026-11-30T05:40"),
            Map.of("orders.csv", "00"),
            new Settings(60, 0, 1),
            runs.isEmpty() ? List.of() : references(),
            false),
        problem(),
        runs,
        dismounts(),
        pulls(),
        runs.isEmpty() ? List.of() : unplaced(),
        runs.isEmpty()
            ? List.of()
            : List.of(new Charge(Rule.UNPLACED, 64_000_000, "no place in the week")),
        figures());
  }

  private static List<Reference> references() {
    return List.of(
        new Reference("earliest-due-date order", 412_350_000L, 31, 3_480),
        new Reference("one mold after the other", 268_100_000L, 22, 1_980));
  }

  private Problem problem() {
    List<PressState> states = new ArrayList<>();
    List<Promise> promises = new ArrayList<>();
    for (Run run : runs) {
      Setup setup = run.change().to();
      if (run.seq() == 1 && run.change().kinds().isEmpty()) {
        states.add(new PressState(run.press(), setup, false, run.job()));
      } else if (run.seq() == 2 && promises.size() < 6) {
        promises.add(new Promise(run.job(), run.press(), run.startMin()));
      }
    }
    return new Problem(
        Shifts.people(people()).apply(SampleWeek.plant("Quillback Grips", true)),
        new Floor(
            presses, List.of(SampleJobs.mold("MV1-1")), states, downtime, promises, List.of()),
        SampleWeek.materials(true),
        jobs,
        List.of(),
        runs.isEmpty()
            ? List.of()
            : List.of(
                new NotChecked(
                    "Whether a mold fits between the tie bars", "presses.csv tie_bar_x_mm", 38),
                new NotChecked("Drying before the first shot", "resins.csv dry_h", 12),
                new NotChecked(
                    "Setter share of 80 % is a plant estimate",
                    "plant.json crew.setter_share_pct", 0)),
        Optional.empty());
  }

  /** One operator for all presses, one for all but the first, and a setter for that. */
  private Person[] people() {
    List<String> ids = presses.stream().map(Press::id).toList();
    List<String> shifts = List.of("early", "late");
    return new Person[] {
      new Person("E-01 Ada", Person.Role.OPERATOR, shifts, ids),
      new Person("E-02 Ben", Person.Role.OPERATOR, shifts, ids.subList(1, ids.size())),
      new Person("S-01 Cem", Person.Role.SETTER, shifts, ids.subList(0, 1))
    };
  }

  private List<Dismount> dismounts() {
    if (runs.size() < 20) {
      return List.of();
    }
    Run last = runs.stream().filter(r -> r.press().equals("V3")).reduce((a, b) -> b).orElseThrow();
    return List.of(
        new Dismount("V3", last.mold(), last.endMin(), last.endMin() + 24, 24, 1_800_000));
  }

  private List<Pull> pulls() {
    List<Pull> pulls = new ArrayList<>();
    Map<String, Job> byId = new HashMap<>();
    jobs.forEach(j -> byId.put(j.id(), j));
    for (Run run : runs) {
      Job job = byId.get(run.job());
      String insert = job.options().get(0).making().takes().get(0).insert();
      boolean inbound = run.seq() % 5 == 4;
      pulls.add(
          new Pull(
              run.id(),
              run.press(),
              run.startMin() - 30,
              insert,
              inbound ? "" : "L" + (2_000 + pulls.size()),
              inbound ? "" : "C" + pulls.size() % 9 + "-" + pulls.size() % 4,
              inbound ? run.startMin() - 30 - 95 : 0,
              job.quantity().good() + 40));
    }
    pulls.sort(Comparator.comparingInt(Pull::needByMin));
    return pulls;
  }

  private static List<Unplaced> unplaced() {
    return List.of(
        new Unplaced(
            "4811",
            "1",
            "LV90/M10-B/PP-SGR/A2/FC",
            600,
            "no record says that PP in signal red may touch food",
            "ask the resin's supplier for a declaration and add it to records.csv"),
        new Unplaced(
            "4812",
            "2",
            "SK40/M8-S25/PA66-GF30-BLK",
            1_200,
            "no place before the week ends: its only press V4 is busy",
            "let mold M17 run on V6, or give V4 a Saturday shift"));
  }

  private Figures figures() {
    Map<String, Job> byId = new HashMap<>();
    jobs.forEach(j -> byId.put(j.id(), j));
    long late = 0;
    int lateLines = 0;
    for (Run run : runs) {
      int by = run.readyMin() - byId.get(run.job()).deadline().dueMin();
      late += Math.max(0, by);
      lateLines += by > 0 ? 1 : 0;
    }
    List<Run> changed = runs.stream().filter(r -> !r.change().kinds().isEmpty()).toList();
    long minutes = changed.stream().mapToLong(r -> r.change().minutes()).sum();
    return new Figures(
        runs.size(),
        runs.isEmpty() ? 0 : 2,
        lateLines,
        late,
        changed.size() + dismounts().size(),
        minutes + 24L * dismounts().size(),
        375L * changed.size(),
        runs.isEmpty()
            ? Map.of()
            : Map.of(
                Rule.LATE, 120_000_000L, Rule.CHANGE, 88_325_500L, Rule.UNPLACED, 64_000_000L));
  }
}
