package pressweek.reports.handover;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pressweek.data.plan.Run;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;

/** The handover as a list. */
public final class HandoverList {
  /** What whoever hands over should mind. */
  public static final String CAUTION =
      "Take papers of the replaced plan off the floor; bring inserts back that are no longer"
          + " needed at a press before new ones come.";

  private final PlantClock clock;

  private HandoverList(PlantClock clock) {
    this.clock = clock;
  }

  /** A row a run or line that is not as it was. */
  public static Listing of(Handover handover, PlantClock clock) {
    return new HandoverList(clock).listing(handover);
  }

  private Listing listing(Handover handover) {
    return new ListingColumns<HandoverRow>()
        .list("what", r -> r.what().stream().map(Difference::words).toList())
        .headed("what changed")
        .text("order", HandoverRow::order)
        .text("line", HandoverRow::line)
        .text("item", HandoverRow::item)
        .text("run", HandoverRow::runId)
        .text("press_before", r -> text(r.before(), Run::press))
        .text("press_now", r -> text(r.now(), Run::press))
        .timeIfAny("start_before", r -> r.before().map(this::start))
        .timeIfAny("start_now", r -> r.now().map(this::start))
        .text("mold_before", r -> text(r.before(), Run::mold))
        .text("mold_now", r -> text(r.now(), Run::mold))
        .numberIfAny("quantity_before", r -> r.before().map(HandoverList::pieces))
        .headed("pieces before")
        .numberIfAny("quantity_now", r -> r.now().map(HandoverList::pieces))
        .headed("pieces now")
        .list("inserts_before", r -> r.before().map(RunState::inserts).orElse(List.of()))
        .list("inserts_now", r -> r.now().map(RunState::inserts).orElse(List.of()))
        .numberIfAny("late_min_before", r -> r.before().map(RunState::lateMin))
        .headed("min late before")
        .numberIfAny("late_min_now", r -> r.now().map(RunState::lateMin))
        .headed("min late now")
        .text("reason", HandoverRow::reason)
        .listing(
            "handover",
            "Handover" + (handover.compared() ? " from plan " + handover.replaced() : ""),
            new Paper(CAUTION, "", false, handover.whenEmpty()),
            handover.rows());
  }

  private static String text(Optional<RunState> state, Function<Run, String> part) {
    return state.map(RunState::run).map(part).orElse("");
  }

  private ZonedDateTime start(RunState state) {
    return clock.at(state.run().startMin());
  }

  private static int pieces(RunState state) {
    return state.job().quantity().good();
  }
}
