package pressweek.data.files;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Shift;

/** Reads which shifts of {@code plant.json} are overtime or without people. */
final class OpeningReader {
  private static final String OVERTIME = "overtime_h";
  private static final String UNATTENDED = "unattended";

  private final List<Opening.Overtime> overtime = new ArrayList<>();
  private final List<String> unattended = new ArrayList<>();

  /** Shifts that are not worked as others are. */
  Opening opening() {
    return new Opening(overtime, unattended);
  }

  /** Takes what a shift says of itself. */
  void take(JsonFields fields, Shift shift) {
    if (fields.gave(OVERTIME)) {
      overtime.add(new Opening.Overtime(shift.name(), fields.money(OVERTIME)));
    }
    if (fields.flag(UNATTENDED)) {
      unattended.add(shift.name());
      withoutPeople(fields, shift);
    }
  }

  /** A shift without people has none, and cannot be opened for them. */
  private static void withoutPeople(JsonFields fields, Shift shift) {
    String seen = "shift \"" + shift.name() + "\" is unattended and has ";
    boolean people =
        shift.setters() > 0 || shift.operatorThousandths() > 0 || shift.inspectors().orElse(0) > 0;
    if (people) {
      error(
          fields, UNATTENDED, seen + "people; expected neither setters, operators nor inspectors");
    }
    if (fields.gave(OVERTIME)) {
      error(fields, OVERTIME, seen + "overtime_h; expected one of the two");
    }
  }

  private static void error(JsonFields fields, String key, String message) {
    fields.notes().error(fields.value(key).line(), "shifts." + key, message);
  }
}
