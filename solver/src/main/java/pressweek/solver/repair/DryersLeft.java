package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Run;
import pressweek.data.problem.Drying;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Setup;

/** What dryers hold amid a plan: what is drying by the plan goes on drying. */
final class DryersLeft {
  private final Plan plan;
  private final Drying was;
  private final int nowMin;

  private DryersLeft(Plan plan, int nowMin) {
    this.plan = plan;
    this.was = plan.problem().arranged().drying();
    this.nowMin = nowMin;
  }

  /** The plant's drying from the present on. */
  static Drying of(Plan plan, int nowMin) {
    DryersLeft left = new DryersLeft(plan, nowMin);
    List<Drying.Feed> feeds = new ArrayList<>();
    for (Drying.Feed feed : left.was.dryers()) {
      feeds.add(new Drying.Feed(feed.dryer(), feed.presses(), left.holds(feed)));
    }
    return new Drying(feeds, left.was.materials(), left.was.cleanMin());
  }

  /** What was put into the dryer last, or what it held at the start of the plan. */
  private Optional<Drying.Held> holds(Drying.Feed feed) {
    Optional<Drying.Held> held = feed.holds().or(() -> fromBarrels(feed));
    for (PlantWide.DryerUse use : plan.head().plantWide().dryings()) {
      if (use.dryer().equals(feed.dryer()) && use.dryFromMin() - cleaning(use, held) <= nowMin) {
        held = Optional.of(new Drying.Held(use.content(), start(use, held)));
      }
    }
    return held;
  }

  /** What is being cleaned for a content holds that content already. */
  private int cleaning(PlantWide.DryerUse use, Optional<Drying.Held> before) {
    boolean another = before.filter(h -> !h.content().equals(use.content())).isPresent();
    return another ? was.cleanMin() : 0;
  }

  /** When a content is dry: at the start of the run that it was dried for. */
  private int start(PlantWide.DryerUse use, Optional<Drying.Held> before) {
    Optional<Drying.Held> same = before.filter(h -> h.content().equals(use.content()));
    if (same.isPresent()) {
      return same.get().dryFromMin();
    }
    return plan.runs().stream()
        .filter(r -> r.id().equals(use.run()))
        .mapToInt(Run::startMin)
        .findFirst()
        .orElse(use.dryFromMin());
  }

  private Optional<Drying.Held> fromBarrels(Drying.Feed feed) {
    int start = plan.problem().plant().hours().startMin();
    return feed.presses().stream()
        .filter(press -> isFirst(feed, press))
        .flatMap(press -> plan.problem().floor().states().stream().filter(s -> is(s, press)))
        .map(PressState::setup)
        .flatMap(setup -> was.materials().stream().filter(m -> is(m, setup)))
        .map(m -> new Drying.Held(m.content(), start))
        .findFirst();
  }

  private boolean isFirst(Drying.Feed feed, String press) {
    return was.dryers().stream()
        .filter(f -> f.presses().contains(press))
        .findFirst()
        .filter(f -> f.dryer().equals(feed.dryer()))
        .isPresent();
  }

  private static boolean is(PressState state, String press) {
    return state.press().equals(press);
  }

  private static boolean is(Drying.Dried dried, Setup setup) {
    return dried.resin().equals(setup.resin()) && dried.colour().equals(setup.colour());
  }
}
