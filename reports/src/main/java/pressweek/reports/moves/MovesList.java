package pressweek.reports.moves;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import pressweek.data.plan.Run;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;

/** What moved, as a list. */
public final class MovesList {
  private static final String CAUTION =
      "Stop nothing that is running for this list alone: ask the shift leader first.";

  private static final int CENT_THOUSANDTHS = 5;

  private final PlantClock clock;

  private MovesList(PlantClock clock) {
    this.clock = clock;
  }

  /** A row a run that moved, and a line that is new, unplaced, finished or dropped. */
  public static Listing of(Moves moves) {
    PlantClock clock = PlantClock.of(moves.plan().problem().plant().hours());
    return new MovesList(clock).listing(moves);
  }

  private Listing listing(Moves moves) {
    boolean money = moves.plan().problem().plant().rates().shown();
    return new ListingColumns<Move>()
        .text("what", m -> m.kind().word())
        .text("order", m -> order(m.line()))
        .text("line", m -> m.line().substring(order(m.line()).length() + 1))
        .text("item", Move::item)
        .text("run", m -> m.now().or(m::before).map(Run::id).orElse(""))
        .text("press_before", m -> text(m.before(), Run::press))
        .timeIfAny("start_before", m -> m.before().map(r -> clock.at(r.startMin())))
        .text("press_now", m -> text(m.now(), Run::press))
        .timeIfAny("start_now", m -> m.now().map(r -> clock.at(r.startMin())))
        .numberIfAny("later_min", MovesList::later)
        .text("reason", Move::reason)
        .decimalIfAny("cost", m -> cost(m, money))
        .listing(
            "moves",
            "Moves against plan " + moves.earlier().head().number(),
            new Paper(CAUTION, "", false, "Every run is where it was."),
            MovesReport.of(moves));
  }

  /** The order of {@code order/line}; a line may have a part after it. */
  private static String order(String id) {
    return id.substring(0, Math.max(0, id.indexOf('/')));
  }

  private static String text(Optional<Run> run, Function<Run, String> part) {
    return run.map(part).orElse("");
  }

  private static Optional<Integer> later(Move move) {
    return move.before().flatMap(was -> move.now().map(now -> now.startMin() - was.startMin()));
  }

  private static Optional<BigDecimal> cost(Move move, boolean money) {
    return money && move.kind() == MoveKind.MOVED
        ? Optional.of(BigDecimal.valueOf(move.cost(), CENT_THOUSANDTHS))
        : Optional.empty();
  }
}
