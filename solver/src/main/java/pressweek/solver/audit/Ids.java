package pressweek.solver.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Job;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;

/** What the problem says about an id. Of rows with the same id the first counts. */
final class Ids {
  private final Map<String, Press> presses;
  private final Map<String, Mold> molds;
  private final Map<String, Resin> resins;
  private final Map<List<String>, Colour> colours;
  private final Map<String, Job> jobs;
  private final Map<String, PressState> states;

  Ids(Problem problem) {
    presses = byId(problem.floor().presses(), Press::id);
    molds = byId(problem.floor().molds(), Mold::id);
    resins = byId(problem.materials().resins(), Resin::id);
    colours = byId(problem.materials().colours(), colour -> List.of(colour.resin(), colour.id()));
    jobs = byId(problem.jobs(), Job::id);
    states = byId(problem.floor().states(), PressState::press);
  }

  private static <K, V> Map<K, V> byId(List<V> rows, Function<V, K> id) {
    Map<K, V> map = new HashMap<>();
    rows.forEach(row -> map.putIfAbsent(id.apply(row), row));
    return map;
  }

  Optional<Press> press(String id) {
    return Optional.ofNullable(presses.get(id));
  }

  Optional<Mold> mold(String id) {
    return Optional.ofNullable(molds.get(id));
  }

  /** True when inserts are loaded into the mold by hand, and when the mold is not known. */
  boolean handLoad(String id) {
    return mold(id).map(Mold::handLoad).orElse(true);
  }

  Optional<Resin> resin(String id) {
    return Optional.ofNullable(resins.get(id));
  }

  Optional<Job> job(String id) {
    return Optional.ofNullable(jobs.get(id));
  }

  /**
   * The press as it stands when the plan starts; empty and not cleared when the problem does not
   * say.
   */
  PressState state(String press) {
    return states.getOrDefault(press, new PressState(press, new Setup("", "", "", ""), false, ""));
  }

  /** The lightness of the colour in a barrel: that of its resin, or else that of all resins. */
  OptionalDouble lightness(Setup setup) {
    return Optional.ofNullable(colours.get(List.of(setup.resin(), setup.colour())))
        .or(() -> Optional.ofNullable(colours.get(List.of("", setup.colour()))))
        .map(Colour::lightness)
        .orElse(OptionalDouble.empty());
  }

  /**
   * The option by which a job is made in a mold on a press; of several the one with the tooling
   * set, else the first.
   */
  static Optional<Option> option(Job job, String press, String mold, String tooling) {
    List<Option> options =
        job.options().stream()
            .filter(option -> option.press().equals(press) && option.mold().equals(mold))
            .toList();
    return options.stream()
        .filter(option -> option.tooling().equals(tooling))
        .findFirst()
        .or(() -> options.stream().findFirst());
  }
}
