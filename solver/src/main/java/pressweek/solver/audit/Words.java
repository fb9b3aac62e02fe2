package pressweek.solver.audit;

import java.math.BigDecimal;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Run;
import pressweek.data.problem.Setup;

/** How a finding names what it is about. */
final class Words {
  private Words() {}

  /** A run with its order line and press, for example {@code run R017 (4711/2) on P3}. */
  static String of(Run run) {
    return "run " + run.id() + " (" + run.job() + ") on " + run.press();
  }

  static String of(Dismount dismount) {
    return "the dismount of mold " + dismount.mold() + " on " + dismount.press();
  }

  /** A setup part by part, for example {@code mold M1, tooling none, resin PP, colour BK}. */
  static String of(Setup setup) {
    return "mold %s, tooling %s, resin %s, colour %s"
        .formatted(
            orNone(setup.mold()),
            orNone(setup.tooling()),
            orNone(setup.resin()),
            orNone(setup.colour()));
  }

  /** Money given in thousandths of a cent, as units of the currency. */
  static String money(long thousandths) {
    return BigDecimal.valueOf(thousandths, 5).toPlainString();
  }

  private static String orNone(String id) {
    return id.isEmpty() ? "none" : id;
  }
}
