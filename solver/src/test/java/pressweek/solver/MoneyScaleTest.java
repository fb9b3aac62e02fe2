package pressweek.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Run;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Terms;
import pressweek.solver.timing.Dispatch;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.Timetable;
import pressweek.solver.timing.WeekTables;

/** Where all money is three times as much, every charge is, and no minute is another. */
final class MoneyScaleTest {
  private static final int TIMES = 3;

  /** A charge is rounded down twice at most, and a line may weigh several times an ordinary one. */
  private static final Offset<Long> ROUNDING = Offset.offset(30L);

  @Test
  void threefoldMoneyIsThreefoldCharges() {
    for (long seed = 1; seed <= 30; seed++) {
      Problem problem = DrawnWeeks.arranged(seed);
      WeekTables week = new WeekTables(problem);
      Sequences sequences = new Dispatch(week).atcs(1, 0.3);
      sequences.open((1L << week.overtimeShifts()) - 1);
      Timetable one = Timetable.of(week, sequences);
      Timetable three = Timetable.of(new WeekTables(threefold(problem)), sequences);
      compare(one.whole().charges(), three.whole().charges());
      compare(one.unplacedCharges(), three.unplacedCharges());
      assertThat(three.runs()).hasSameSizeAs(one.runs());
      int entries = one.whole().charges().size() + one.unplacedCharges().size();
      for (int i = 0; i < one.runs().size(); i++) {
        Run run = one.runs().get(i);
        Run other = three.runs().get(i);
        assertThat(other.startMin()).isEqualTo(run.startMin());
        compare(run.charges(), other.charges());
        entries += run.charges().size();
      }
      assertThat(three.figures().avoidableCost())
          .isCloseTo(
              TIMES * one.figures().avoidableCost(),
              Offset.offset(30L * (entries + one.dismounts().size())));
    }
  }

  private static void compare(List<Charge> one, List<Charge> three) {
    assertThat(three).hasSameSizeAs(one);
    for (int i = 0; i < one.size(); i++) {
      assertThat(three.get(i).rule()).isEqualTo(one.get(i).rule());
      assertThat(three.get(i).amount())
          .as("%s", one.get(i))
          .isCloseTo(TIMES * one.get(i).amount(), ROUNDING);
    }
  }

  private static Problem threefold(Problem problem) {
    Plant p = problem.plant();
    Floor f = problem.floor();
    Materials m = problem.materials();
    return new Problem(
            new Plant(
                p.name(),
                p.hours(),
                p.crew(),
                p.shipping(),
                threefold(p.rates()),
                p.changes(),
                p.moveToleranceMin(),
                p.barrelDefaultG()),
            new Floor(
                f.presses().stream().map(MoneyScaleTest::threefold).toList(),
                f.molds(),
                f.states(),
                f.downtime(),
                f.promises(),
                f.recordedChanges()),
            new Materials(
                m.resins().stream().map(MoneyScaleTest::threefold).toList(),
                m.colours(),
                m.inserts(),
                m.stock()),
            problem.jobs(),
            problem.unplaced(),
            problem.notChecked(),
            problem.kitting())
        .with(threefold(problem.arranged()));
  }

  private static Rates threefold(Rates r) {
    return new Rates(
        r.currency(),
        r.shown(),
        TIMES * r.lateStep(),
        TIMES * r.lateDay(),
        TIMES * r.changeHour(),
        TIMES * r.purgeKg(),
        TIMES * r.keptPressHour(),
        TIMES * r.unplaced());
  }

  private static Press threefold(Press p) {
    return new Press(
        p.id(), p.cell(), p.build(), p.size(), p.calendar(), p.food(), TIMES * p.ratePerHour());
  }

  private static Resin threefold(Resin r) {
    return new Resin(
        r.id(),
        r.grade(),
        r.densityGCm3(),
        r.meltC(),
        r.cavityKnCm2(),
        TIMES * r.pricePerKg(),
        r.barrel(),
        r.neverNextTo());
  }

  private static Arrangements threefold(Arrangements a) {
    Terms t = a.terms();
    Terms terms =
        new Terms(
            t.campaignMin(),
            TIMES * t.shortCampaignHour(),
            TIMES * t.closeHour(),
            TIMES * t.movedRun(),
            t.earlier());
    List<Opening.Overtime> overtime =
        a.opening().overtime().stream()
            .map(o -> new Opening.Overtime(o.shift(), TIMES * o.perHour()))
            .toList();
    return new Arrangements(
        a.things(),
        a.devices(),
        a.services(),
        a.trials(),
        a.links(),
        a.surplus(),
        new Opening(overtime, a.opening().unattended()),
        new Arrangements.Settled(a.drying(), terms));
  }
}
