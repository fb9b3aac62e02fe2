package pressweek.reports.calendar;

import java.util.List;
import pressweek.reports.hours.Span;

/**
 * Something that takes a press for a time.
 *
 * @param uid what stays the same when the plan is made anew
 * @param span when
 * @param press where
 * @param summary what, in a few words
 * @param details more of it, a line each; empty lines are left out
 */
record Appointment(String uid, Span span, String press, String summary, List<String> details) {
  Appointment {
    details = details.stream().filter(d -> !d.isBlank()).toList();
  }

  String description() {
    return String.join("\n", details);
  }
}
