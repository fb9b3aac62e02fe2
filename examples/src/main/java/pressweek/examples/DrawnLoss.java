package pressweek.examples;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.files.At;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;

/** Draws presses that are lost for a day while they work, in the first days of a plan. */
final class DrawnLoss {
  private static final int DAY = 1_440;

  /** Later losses would leave too little to plan. */
  private static final int FIRST_DAYS = 4;

  private DrawnLoss() {}

  /** So many losses, each to be taken alone; the present is when they begin. */
  static List<FloorEvent> draw(Plan plan, int count, long seed) {
    Draw draw = new Draw(seed);
    int last = plan.problem().plant().hours().startMin() + FIRST_DAYS * DAY;
    List<Run> runs = plan.runs().stream().filter(run -> run.startMin() < last).toList();
    List<FloorEvent> events = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      Run run = draw.of(runs);
      int from = draw.between(run.startMin(), Math.min(run.endMin(), last) - 1);
      events.add(
          new FloorEvent(
              new At("events.csv", i + 1),
              EventKind.PRESS_AWAY,
              run.press(),
              from,
              from + DAY,
              0,
              "lost for a day"));
    }
    return events;
  }
}
