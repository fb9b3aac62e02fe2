package pressweek.reports.sample;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import pressweek.data.problem.Break;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Person;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Shift;

/** Other shifts and crews for the plant of the tests. */
public final class Shifts {
  private Shifts() {}

  /** The plant with every shift changed. */
  public static UnaryOperator<Plant> with(UnaryOperator<Shift> change) {
    return p -> {
      Hours h = p.hours();
      List<Shift> shifts = h.shifts().stream().map(change).toList();
      Hours hours =
          new Hours(h.zone(), h.startMin(), h.endMin(), shifts, h.calendars(), h.closed());
      return of(p, hours, p.crew());
    };
  }

  /** The plant that did not say how many setters and operators it has. */
  public static UnaryOperator<Plant> unchecked() {
    return p -> of(p, p.hours(), new Crew(false, false, 80, false, 30));
  }

  /** The plant that lists its people. */
  public static UnaryOperator<Plant> people(Person... people) {
    return p -> of(p, p.hours(), p.crew().with(Optional.of(List.of(people))));
  }

  private static Plant of(Plant p, Hours hours, Crew crew) {
    return new Plant(
        p.name(),
        hours,
        crew,
        p.shipping(),
        p.rates(),
        p.changes(),
        p.moveToleranceMin(),
        p.barrelDefaultG());
  }

  /** The shift with so many inspectors. */
  public static Shift inspectors(Shift s, OptionalInt inspectors) {
    return new Shift(
        s.name(),
        s.days(),
        s.from(),
        s.to(),
        s.breaks(),
        s.setters(),
        s.operatorThousandths(),
        inspectors);
  }

  /** The shift with so many setters and thousandths of operators, and with these breaks. */
  public static Shift crew(Shift s, int setters, int operatorThousandths, Break... breaks) {
    return new Shift(
        s.name(),
        s.days(),
        s.from(),
        s.to(),
        List.of(breaks),
        setters,
        operatorThousandths,
        OptionalInt.empty());
  }
}
