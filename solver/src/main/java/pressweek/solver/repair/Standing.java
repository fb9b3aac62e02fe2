package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Run;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;

/**
 * How the floor stands at present, as it is being walked up to.
 *
 * <p>A press or a mold that something unfinished holds is free {@link WorkSpans#NEVER}.
 */
final class Standing {
  private final Map<String, PressState> presses = new LinkedHashMap<>();
  private final Map<String, Integer> pressFree = new LinkedHashMap<>();
  private final Map<String, Integer> moldFree = new LinkedHashMap<>();
  private final Map<String, Progress> runs = new LinkedHashMap<>();
  private final List<TakenOff> takenOff = new ArrayList<>();

  /** A mold that is being taken off a press at present, and until when. */
  record TakenOff(String press, String mold, int untilMin) {}

  void at(PressState state) {
    presses.put(state.press(), state);
  }

  /** The press as it stands; empty and cleared for nothing where nothing is known. */
  PressState press(String id) {
    return presses.getOrDefault(id, new PressState(id, new Setup("", "", "", ""), false, ""));
  }

  List<PressState> presses() {
    return List.copyOf(presses.values());
  }

  void keep(Progress progress) {
    runs.put(progress.run().id(), progress);
  }

  Progress of(Run run) {
    return Optional.ofNullable(runs.get(run.id()))
        .orElse(new Progress(run, Progress.Stage.WAITING, 0, 0));
  }

  List<Progress> runs() {
    return List.copyOf(runs.values());
  }

  int free(String press, String mold) {
    return Math.max(pressFree.getOrDefault(press, 0), moldFree.getOrDefault(mold, 0));
  }

  void holdPress(String press, int until) {
    pressFree.merge(press, until, Math::max);
  }

  void holdMold(String mold, int until) {
    if (!mold.isEmpty()) {
      moldFree.merge(mold, until, Math::max);
    }
  }

  void add(TakenOff off) {
    takenOff.add(off);
  }

  /** Molds that are being taken off at present. */
  List<TakenOff> takenOff() {
    return List.copyOf(takenOff);
  }
}
