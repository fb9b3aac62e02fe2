package pressweek.solver.why;

import java.util.List;
import java.util.function.UnaryOperator;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Stock;

/** A problem with one part of it exchanged. */
final class Edit {
  private Edit() {}

  static Problem receipts(Problem of, List<Receipt> receipts) {
    Materials was = of.materials();
    Stock stock = new Stock(was.stock().checked(), was.stock().lots(), receipts);
    return of.with(
        new Materials(was.resins(), was.colours(), was.inserts(), stock, was.preparation()));
  }

  static Problem hours(Problem of, List<Shift> shifts, List<Calendar> calendars) {
    Plant was = of.plant();
    Hours hours = was.hours();
    return of.with(
        new Plant(
            was.name(),
            new Hours(
                hours.zone(), hours.startMin(), hours.endMin(), shifts, calendars, hours.closed()),
            was.crew(),
            was.shipping(),
            was.rates(),
            was.changes(),
            was.moveToleranceMin(),
            was.barrelDefaultG()));
  }

  /** Every shift of a name changed. */
  static Problem shifts(Problem of, String name, UnaryOperator<Shift> change) {
    Hours hours = of.plant().hours();
    return hours(
        of,
        hours.shifts().stream().map(s -> s.name().equals(name) ? change.apply(s) : s).toList(),
        hours.calendars());
  }

  static Problem presses(Problem of, List<Press> presses) {
    Floor was = of.floor();
    return of.with(
        new Floor(
            presses,
            was.molds(),
            was.states(),
            was.downtime(),
            was.promises(),
            was.recordedChanges()));
  }

  static Problem molds(Problem of, List<Mold> molds) {
    Floor was = of.floor();
    return of.with(
        new Floor(
            was.presses(),
            molds,
            was.states(),
            was.downtime(),
            was.promises(),
            was.recordedChanges()));
  }

  static Problem downtime(Problem of, List<Downtime> downtime) {
    Floor was = of.floor();
    return of.with(
        new Floor(
            was.presses(),
            was.molds(),
            was.states(),
            downtime,
            was.promises(),
            was.recordedChanges()));
  }

  static Problem promises(Problem of, List<Promise> promises) {
    Floor was = of.floor();
    return of.with(
        new Floor(
            was.presses(),
            was.molds(),
            was.states(),
            was.downtime(),
            promises,
            was.recordedChanges()));
  }
}
