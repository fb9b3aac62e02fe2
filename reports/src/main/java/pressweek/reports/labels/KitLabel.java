package pressweek.reports.labels;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;

/**
 * A label for the inserts of a run.
 *
 * @param plan plan number
 * @param run the run
 * @param job what it makes
 * @param needByMin when they must be at the press; for a run without pulls, when it or the change
 *     before it starts
 * @param pulls what is in the box; none for a run that takes nothing from stock
 * @param place which label of the run it is, from 1
 * @param count labels of the run
 */
public record KitLabel(
    String plan, Run run, Job job, int needByMin, List<Pull> pulls, int place, int count) {
  public KitLabel {
    pulls = List.copyOf(pulls);
  }

  /** What the bars hold: plan and run, {@code 2026-W49/3 R017}. */
  public String ids() {
    return plan + " " + run.id();
  }

  /**
   * What the square code holds: a line each for plan, run, press, order line, item, mold, need-by
   * and every pull.
   *
   * @param needBy need-by time by ISO 8601
   */
  public String text(String needBy) {
    List<String> lines = new ArrayList<>();
    lines.add("plan " + plan);
    lines.add("run " + run.id() + (count > 1 ? " box " + place + " of " + count : ""));
    lines.add("press " + run.press());
    lines.add("line " + job.id());
    lines.add("item " + job.item().code());
    lines.add("mold " + run.mold());
    lines.add("need by " + needBy);
    pulls.forEach(p -> lines.add(pull(p)));
    return String.join("\n", lines);
  }

  /** Only what finds the run again. */
  public String shortText() {
    return String.join(
        "\n", "plan " + plan, "run " + run.id(), "press " + run.press(), "line " + job.id());
  }

  private static String pull(Pull pull) {
    return "insert "
        + pull.insert()
        + " pieces "
        + pull.pieces()
        + (pull.bin().isBlank() ? "" : " bin " + pull.bin())
        + (pull.lot().isBlank() ? "" : " lot " + pull.lot());
  }
}
