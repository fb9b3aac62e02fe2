package pressweek.solver.repair;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.PlantWide.DryerUse;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;

/** Run numbers that stay the same from one plan to the next where the run does. */
public final class RunNumbers {
  private final Map<String, String> byJob = new HashMap<>();
  private final Map<String, String> renamed = new HashMap<>();
  private int highest;

  private RunNumbers(Plan earlier) {
    for (Run run : earlier.runs()) {
      byJob.put(run.job(), run.id());
      if (run.id().matches("R\\d{1,8}")) {
        highest = Math.max(highest, Integer.parseInt(run.id().substring(1)));
      }
    }
  }

  /**
   * A plan whose runs have the numbers that they had; runs of lines that the earlier plan had no
   * run of take the numbers after its highest.
   */
  public static Plan kept(Plan earlier, Plan plan) {
    return new RunNumbers(earlier).number(plan);
  }

  private Plan number(Plan plan) {
    List<Run> runs = plan.runs().stream().map(this::number).toList();
    List<Pull> pulls = plan.pulls().stream().map(this::number).toList();
    return plan.with(number(plan.head())).withRuns(runs).withPulls(pulls);
  }

  private Run number(Run run) {
    String id =
        byJob.computeIfAbsent(run.job(), j -> String.format(Locale.ROOT, "R%03d", ++highest));
    renamed.put(run.id(), id);
    return new Run(
        id,
        run.job(),
        run.press(),
        run.mold(),
        run.seq(),
        run.change(),
        run.startMin(),
        run.endMin(),
        run.readyMin(),
        run.waits(),
        run.charges());
  }

  private Pull number(Pull pull) {
    return new Pull(
        renamed.getOrDefault(pull.run(), pull.run()),
        pull.press(),
        pull.needByMin(),
        pull.insert(),
        pull.lot(),
        pull.bin(),
        pull.receiptMin(),
        pull.pieces());
  }

  private Head number(Head head) {
    if (head.whole().isEmpty()) {
      return head;
    }
    PlantWide whole = head.plantWide();
    List<DryerUse> dryings =
        whole.dryings().stream()
            .map(
                use ->
                    new DryerUse(
                        renamed.getOrDefault(use.run(), use.run()),
                        use.dryer(),
                        use.content(),
                        use.dryFromMin(),
                        use.toMin()))
            .toList();
    return new Head(
        head.number(),
        head.replaces(),
        head.madeMin(),
        head.inputs(),
        head.settings(),
        head.references(),
        head.stopped(),
        Optional.of(
            new PlantWide(whole.opened(), whole.held(), dryings, whole.charges(), whole.bound())));
  }
}
