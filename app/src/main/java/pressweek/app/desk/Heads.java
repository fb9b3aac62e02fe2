package pressweek.app.desk;

import java.util.Map;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;

/** Plans and heads with another number, of other files, or searched for in another way. */
final class Heads {
  private Heads() {}

  static Plan with(Plan plan, String number, String replaces) {
    Head head = plan.head();
    return plan.with(
        new Head(
            number,
            replaces,
            head.madeMin(),
            head.inputs(),
            head.settings(),
            head.references(),
            head.stopped(),
            head.whole()));
  }

  static Head with(Head head, Settings settings) {
    return new Head(
        head.number(),
        head.replaces(),
        head.madeMin(),
        head.inputs(),
        settings,
        head.references(),
        head.stopped(),
        head.whole());
  }

  static Head with(Head head, Map<String, String> inputs) {
    return new Head(
        head.number(),
        head.replaces(),
        head.madeMin(),
        inputs,
        head.settings(),
        head.references(),
        head.stopped(),
        head.whole());
  }
}
