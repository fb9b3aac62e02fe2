package pressweek.reports.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.reports.compare.PlanFigures.Changing;
import pressweek.reports.compare.PlanFigures.Delivery;
import pressweek.reports.compare.PlanFigures.Flow;
import pressweek.reports.compare.PlanFigures.LoadTables;
import pressweek.reports.compare.PlanFigures.People;
import pressweek.reports.moves.Move;
import pressweek.reports.moves.MoveKind;
import pressweek.reports.moves.Moves;
import pressweek.reports.moves.MovesReport;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.stock.ShortageList;

/** Works the figures of a plan out; what the plan itself states is taken from it. */
final class FigureReport {
  private static final double MILLIS_A_MINUTE = 60_000;
  private static final int PERSON = 1000;

  private final PlanBook book;
  private final Plan plan;
  private final Optional<Plan> promised;

  FigureReport(PlanBook book, Optional<Plan> promised) {
    this.book = book;
    this.plan = book.plan();
    this.promised = promised;
  }

  PlanFigures figures() {
    Loads loads = new Loads(book, new PressHours(book));
    List<Load> presses = loads.byPress();
    return new PlanFigures(
        delivery(),
        changing(),
        times(presses),
        people(),
        flow(),
        new LoadTables(presses, loads.byPressAndDay(), loads.byShift()),
        plan.figures().costByRule());
  }

  private Delivery delivery() {
    Map<String, Integer> ready = new HashMap<>();
    plan.runs().forEach(run -> ready.put(run.job(), run.readyMin()));
    int onRequest = 0;
    long weight = 0;
    long weightOnTime = 0;
    long weightOnRequest = 0;
    for (Job job : plan.problem().jobs()) {
      int at = ready.getOrDefault(job.id(), Integer.MAX_VALUE);
      int hundredths = job.deadline().weightHundredths();
      weight += hundredths;
      weightOnTime += at <= job.deadline().dueMin() ? hundredths : 0;
      weightOnRequest += at <= job.line().requestedMin() ? hundredths : 0;
      onRequest += at <= job.line().requestedMin() ? 1 : 0;
    }
    int placed = plan.figures().placedLines();
    return new Delivery(
        placed + plan.figures().unplacedLines(),
        placed,
        placed - plan.figures().lateLines(),
        onRequest,
        weight,
        weightOnTime,
        weightOnRequest,
        plan.figures().lateMin());
  }

  private Changing changing() {
    Map<ChangeKind, Integer> count = new EnumMap<>(ChangeKind.class);
    Map<ChangeKind, Long> minutes = new EnumMap<>(ChangeKind.class);
    for (Run run : plan.runs()) {
      Change change = run.change();
      if (!change.kinds().isEmpty()) {
        count.merge(change.kinds().get(0), 1, Integer::sum);
        minutes.merge(change.kinds().get(0), (long) change.minutes(), Long::sum);
      }
    }
    return new Changing(
        plan.figures().changes(),
        plan.figures().changeMin(),
        count,
        minutes,
        plan.dismounts().size(),
        plan.dismounts().stream().mapToLong(Dismount::minutes).sum(),
        plan.figures().purgeG());
  }

  private WorkTimes times(List<Load> presses) {
    double planned = 0;
    double good = 0;
    for (Run run : plan.runs()) {
      Optional<Option> option = book.option(run);
      if (option.isPresent()) {
        double cycle = option.get().pace().cycleMillis() / MILLIS_A_MINUTE;
        int cavities = Math.max(1, option.get().making().liveCavities());
        int startup = exchanges(run) ? option.get().making().startupShots() : 0;
        planned += cycle * (option.get().making().shots() + startup);
        good += cycle * book.job(run).quantity().good() / cavities;
      }
    }
    return new WorkTimes(
        presses.stream().mapToInt(Load::busyMin).sum(),
        presses.stream().mapToInt(Load::setupMin).sum(),
        presses.stream().mapToInt(Load::productionMin).sum(),
        planned,
        good);
  }

  /** A food clearance alone does not count as exchanging something for start-up. */
  private static boolean exchanges(Run run) {
    return run.change().kinds().stream().anyMatch(k -> k != ChangeKind.FOOD_CLEARANCE);
  }

  private long runMin(Run run) {
    return book.option(run)
        .map(o -> o.pace().runMin() + (exchanges(run) ? o.pace().startupMin() : 0))
        .orElse(0);
  }

  private People people() {
    long thousandths = 0;
    for (Run run : plan.runs()) {
      int each = book.option(run).map(o -> o.pace().operatorThousandths()).orElse(0);
      thousandths += each * runMin(run);
    }
    var opened = plan.head().plantWide().opened();
    return new People(
        Math.round((double) thousandths / PERSON),
        plan.figures().changeMin(),
        opened.size(),
        opened.stream().mapToLong(o -> o.toMin() - o.fromMin()).sum());
  }

  private Flow flow() {
    List<Long> campaigns = campaigns();
    Optional<Integer> moved =
        promised.map(
            earlier ->
                (int)
                    MovesReport.of(
                            new Moves(earlier, earlier, plan, List.of(), List.of(), List.of()))
                        .stream()
                        .map(Move::kind)
                        .filter(k -> k == MoveKind.MOVED)
                        .count());
    return new Flow(
        ShortageList.of(book).rows().size(),
        campaigns.size(),
        campaigns.stream().mapToLong(Long::longValue).sum(),
        campaigns.stream().mapToLong(Long::longValue).max().orElse(0),
        moved);
  }

  /** Run minutes of each row of runs of one mold on one press. */
  private List<Long> campaigns() {
    List<Long> lengths = new ArrayList<>();
    for (Press press : book.presses()) {
      String mold = "";
      for (Run run : book.runsOn(press)) {
        boolean mounted = run.change().kinds().contains(ChangeKind.MOLD);
        int last = lengths.size() - 1;
        if (mounted || !run.mold().equals(mold)) {
          lengths.add(runMin(run));
        } else {
          lengths.set(last, lengths.get(last) + runMin(run));
        }
        mold = run.mold();
      }
    }
    return List.copyOf(lengths);
  }
}
