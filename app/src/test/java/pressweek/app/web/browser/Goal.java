package pressweek.app.web.browser;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.List;
import pressweek.app.store.StoreTrouble;
import pressweek.data.plan.Run;

/**
 * A move that the week allows: a line to the end of another press's strip.
 *
 * @param line the line
 * @param from the press where it is
 * @param press the press where it could go
 * @param after the last line there
 * @param place how many lines that may move stand before it there
 */
record Goal(String line, String from, String press, String after, int place) {
  /** The first such move of the week on the desk. */
  static Goal in(Plant plant) throws IOException, InterruptedException, StoreTrouble {
    List<Run> runs = plant.plan().runs();
    for (JsonNode run : plant.get("/api/week").path("runs")) {
      String line = run.path("line").asText();
      String from = run.path("press").asText();
      for (JsonNode place : plant.get("/api/week/places?line=" + line).path("places")) {
        Goal goal =
            new Goal(
                line,
                from,
                place.path("press").asText(),
                place.path("after").asText(),
                place.path("place").asInt());
        boolean last = last(runs, goal.press()).equals(goal.after());
        if (!goal.press().equals(from) && last) {
          return goal;
        }
      }
    }
    throw new AssertionError("no line can go to the end of another strip");
  }

  /** The last line on a press; empty for none. */
  static String last(List<Run> runs, String press) {
    String last = "";
    int end = Integer.MIN_VALUE;
    for (Run run : runs) {
      if (run.press().equals(press) && run.endMin() > end) {
        last = run.job();
        end = run.endMin();
      }
    }
    return last;
  }
}
