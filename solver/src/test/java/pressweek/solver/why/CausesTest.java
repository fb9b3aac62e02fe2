package pressweek.solver.why;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.DAY;
import static pressweek.data.problem.SmallPlant.START;
import static pressweek.data.problem.SmallPlant.shift;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.Crew;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Drying;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Link;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Shift;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Take;
import pressweek.solver.Plans;

/** Every cause of waiting: its place in the chain, the sum of the chain, and what cures it. */
final class CausesTest {
  /** Change of a mold on an empty press and a run of 100 minutes, to the minute. */
  private static final int BARE = 36 + 10 + 100;

  /** A week in which a line is late for a cause, and what would cure it; empty for nothing. */
  private record Case(Cause cause, String cure, Problem problem) {
    @Override
    public String toString() {
      return cause.name();
    }
  }

  private static JobBuilder tight(String order) {
    return job(order).due(START + BARE);
  }

  /** Two lines, each tight, on a press and with a mold of its own. */
  private static SmallPlant two() {
    return new SmallPlant().job(tight("1").on("P1", "M1", 100)).job(tight("2").on("P2", "M2", 100));
  }

  private static Crew crew(boolean setters, boolean operators) {
    return new Crew(setters, operators, 100, false, 0);
  }

  private static Problem arranged(SmallPlant plant, UnaryOperator<Arrangements> change) {
    return plant.build().with(change.apply(Arrangements.NONE));
  }

  private static Arrangements with(
      List<CountedThing> things, List<DeviceNeed> devices, List<MoldService> services) {
    return new Arrangements(
        things,
        devices,
        services,
        List.of(),
        List.of(),
        List.of(),
        Opening.NONE,
        Arrangements.NONE.settled());
  }

  private static Problem inserts() {
    return new SmallPlant()
        .stock(List.of(), List.of(new Receipt("I1", 100, START + 3 * DAY, START + 3 * DAY)))
        .job(tight("1").takes(new Take("I1", 100, 0, 0)).on("P1", "M1", 100))
        .build();
  }

  private static Problem inspectors() {
    Shift all = shift("all", "00:00", "00:00");
    Shift one =
        new Shift(
            all.name(),
            all.days(),
            all.from(),
            all.to(),
            all.breaks(),
            2,
            4_000,
            OptionalInt.of(1));
    return two().shifts(one).build();
  }

  private static Problem sharedMold() {
    return new SmallPlant()
        .job(tight("1").on("P1", "M1", 100))
        .job(tight("2").on("P2", "M1", 100))
        .build();
  }

  private static Problem away(Downtime.Kind kind, String id) {
    return new SmallPlant()
        .away(new Downtime(kind, id, START, START + DAY, "repair"))
        .job(tight("1").on("P1", "M1", 100))
        .build();
  }

  private static Problem night() {
    return new SmallPlant()
        .shifts(shift("day", "06:00", "14:00"), shift("night", "22:00", "06:00"))
        .calendar("days", "day")
        .press(onCalendar("days"))
        .job(tight("1").on("P1", "M1", 100))
        .build();
  }

  private static pressweek.data.problem.Press onCalendar(String calendar) {
    pressweek.data.problem.Press p = SmallPlant.horizontal("P1");
    return new pressweek.data.problem.Press(
        p.id(), p.cell(), p.build(), p.size(), calendar, p.food(), p.ratePerHour());
  }

  private static Problem dryers() {
    List<Drying.Dried> dried =
        List.of(new Drying.Dried("PP", "BLK", "PP", 60), new Drying.Dried("ABS", "BLK", "ABS", 60));
    Drying drying = new Drying(List.of(new Drying.Feed("D1", List.of("P1", "P2"))), dried, 30);
    return arranged(
        new SmallPlant()
            .job(tight("1").on("P1", "M1", 100))
            .job(tight("2").in("ABS", "BLK").on("P2", "M2", 100)),
        none -> none.with(drying));
  }

  private static Problem linked() {
    return arranged(
        two(),
        none ->
            new Arrangements(
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new Link("2/1", "1/1", 300)),
                List.of(),
                Opening.NONE,
                none.settled()));
  }

  private static Problem promised() {
    return new SmallPlant()
        .promise(new Promise("1/1", "P1", START + 60))
        .job(job("1").on("P1", "M1", 100))
        .job(tight("2").on("P2", "M1", 100))
        .build();
  }

  private static Problem queue() {
    return new SmallPlant()
        .away(new Downtime(Downtime.Kind.PRESS, "P2", START, START + DAY, "repair"))
        .job(tight("1").on("P1", "M1", 100))
        .job(tight("2").on("P1", "M2", 100).on("P2", "M2", 100))
        .build();
  }

  /**
   * Line 2 can run on P2 only after line 3, in the mold that line 1 would take at once; line 1 is
   * cheaper to be late.
   */
  private static Problem choice() {
    return new SmallPlant()
        .job(tight("1").weight(10).on("P1", "M1", 1_000))
        .job(job("2").weight(1_000).due(START + 600).on("P2", "M1", 100))
        .job(job("3").weight(1_000).due(START + 250).on("P2", "M2", 100))
        .build();
  }

  static Stream<Case> cases() {
    Problem tooling =
        arranged(
            two(),
            none ->
                with(
                    List.of(new CountedThing("heater", 1)),
                    List.of(new DeviceNeed("M1", "heater"), new DeviceNeed("M2", "heater")),
                    List.of()));
    Problem service =
        arranged(
            new SmallPlant().job(tight("1").on("P1", "M1", 100)),
            none -> with(List.of(), List.of(), List.of(new MoldService("M1", 10, 1_000, 600))));
    return Stream.of(
        new Case(Cause.INSERTS, "deliveries of I1 a day earlier", inserts()),
        new Case(
            Cause.SETTER,
            "one more setter in shift all",
            two().shifts(shift("all", "00:00", "00:00", 1)).crew(crew(true, false)).build()),
        new Case(
            Cause.OPERATOR,
            "one more operator in shift all",
            new SmallPlant()
                .crew(crew(false, true))
                .job(tight("1").operators(2_500).on("P1", "M1", 100))
                .job(tight("2").operators(2_500).on("P2", "M2", 100))
                .build()),
        new Case(Cause.INSPECTOR, "one more inspector in shift all", inspectors()),
        new Case(Cause.MOLD, "a second copy of mold M1", sharedMold()),
        new Case(Cause.MOLD_AWAY, "mold M1 back at once", away(Downtime.Kind.MOLD, "M1")),
        new Case(Cause.SHIFT, "press P1 back at once", away(Downtime.Kind.PRESS, "P1")),
        new Case(Cause.SHIFT, "shift night for P1", night()),
        new Case(
            Cause.EARLIEST,
            "line 1/1 free to start at once",
            new SmallPlant().job(tight("1").earliest(START + 600).on("P1", "M1", 100)).build()),
        new Case(Cause.PROMISED, "a second copy of mold M1", promised()),
        new Case(Cause.TOOLING, "one more of heater", tooling),
        new Case(Cause.SERVICE, "the service of mold M1 before the plan starts", service),
        new Case(Cause.DRYER, "another dryer for P", dryers()),
        new Case(Cause.CHOICE, "a second copy of mold M1", choice()),
        new Case(Cause.LINKED, "", linked()),
        new Case(Cause.PRESS, "press P2 back at once", queue()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theChainNamesTheCauseAndAddsUpAndACureIsFound(Case each) {
    Plan plan = Plans.of(each.problem(), 30, 1);
    Why why = new Why(plan, new Settings(0, 30, 1));
    List<Explanation> late = new ArrayList<>();
    for (Run run : plan.runs()) {
      Explanation explanation = why.of(run.job());
      int total = explanation.chain().stream().mapToInt(Stretch::minutes).sum();
      assertThat(total).isEqualTo(run.readyMin() - START);
      assertThat(explanation.chain().get(0).fromMin()).isEqualTo(START);
      if (explanation.lateMin() > 0) {
        late.add(explanation);
      }
    }
    assertThat(late).anySatisfy(e -> assertThat(e.chain()).anyMatch(s -> shows(s, each.cause())));
    List<String> cures =
        late.stream().flatMap(e -> e.cures().helping().stream()).map(Cure::what).toList();
    if (each.cure().isEmpty()) {
      assertThat(cures).isEmpty();
    } else {
      assertThat(cures).anyMatch(c -> c.startsWith(each.cure()));
    }
  }

  /** A wait for the cause; a busy press shows as the runs that take its time. */
  private static boolean shows(Stretch stretch, Cause cause) {
    return cause == Cause.PRESS
        ? stretch.what() == Stretch.What.RUN
        : stretch.waited().filter(w -> w.cause() == cause).isPresent();
  }
}
