package pressweek.app.web;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.reports.schedule.PlanBook;

/**
 * What pulls are known by through replans, when runs get other numbers: job, thing and lot, with a
 * number after it where that is not enough, as for two receipts.
 */
final class PullKeys {
  private final Map<Pull, String> keys = new IdentityHashMap<>();

  PullKeys(PlanBook book) {
    Map<String, Integer> seen = new HashMap<>();
    for (Pull pull : book.plan().pulls()) {
      String job = book.run(pull.run()).map(Run::job).orElse(pull.run());
      String key = job + "|" + pull.insert() + "|" + pull.lot();
      int count = seen.merge(key, 1, Integer::sum);
      keys.put(pull, count == 1 ? key : key + "|" + count);
    }
  }

  /** The key of a pull of the book. */
  String of(Pull pull) {
    String key = keys.get(pull);
    if (key == null) {
      throw new IllegalArgumentException("a pull for run " + pull.run() + " is none of the plan");
    }
    return key;
  }
}
