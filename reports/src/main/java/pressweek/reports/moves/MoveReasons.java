package pressweek.reports.moves;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.reports.hours.Minutes;

/**
 * Why a run is not where it was: an event that took its press, its mold or a lot of it away; else
 * what it waits for; else the run that is in its way.
 */
final class MoveReasons {
  private static final Map<Cause, EventKind> BY_CAUSE = new EnumMap<>(Cause.class);

  static {
    BY_CAUSE.put(Cause.MOLD_AWAY, EventKind.MOLD_AWAY);
    BY_CAUSE.put(Cause.SETTER, EventKind.PERSON_AWAY);
    BY_CAUSE.put(Cause.OPERATOR, EventKind.PERSON_AWAY);
    BY_CAUSE.put(Cause.INSERTS, EventKind.LOT_HELD);
  }

  private final Moves moves;
  private final Plan plan;
  private final Plan earlier;
  private final Predicate<Run> isMoved;

  MoveReasons(Moves moves, Predicate<Run> isMoved) {
    this.moves = moves;
    this.isMoved = isMoved;
    plan = moves.plan();
    earlier = moves.earlier();
  }

  /** Why there is a run that was not there. */
  String isNew(Run run) {
    boolean was = earlier.unplaced().stream().anyMatch(u -> u.id().equals(run.job()));
    Optional<FloorEvent> rush =
        moves.events().stream().filter(e -> isRush(e, run.job())).findFirst();
    return was ? "it had no place before" : rush.map(MoveReasons::words).orElse("new order line");
  }

  /** True for the event of a new line, or of the line of which it is a part. */
  private static boolean isRush(FloorEvent event, String line) {
    return event.says(EventKind.RUSH, line)
        || event.kind() == EventKind.RUSH && line.startsWith(event.what() + "/");
  }

  /** Why a run moved. */
  String moved(Run was, Run now) {
    return event(was)
        .or(() -> taken(was, now))
        .or(() -> waits(was, now))
        .or(() -> pushed(was, now))
        .orElse(
            now.startMin() < was.startMin()
                ? "there is room for it earlier"
                : "it costs less there than in its old place");
  }

  /** An event that takes away what the run had in its old place. */
  private Optional<String> event(Run was) {
    int from = begins(was);
    for (FloorEvent event : moves.events()) {
      boolean then = event.fromMin() < was.endMin() && from < event.toMin();
      boolean press = event.says(EventKind.PRESS_AWAY, was.press());
      boolean mold = event.says(EventKind.MOLD_AWAY, was.mold());
      boolean lot =
          event.kind() == EventKind.LOT_HELD
              && earlier.pulls().stream()
                  .anyMatch(p -> p.run().equals(was.id()) && p.lot().equals(event.what()));
      if (then && (press || mold) || lot) {
        return Optional.of(words(event));
      }
    }
    return Optional.empty();
  }

  private static int begins(Run run) {
    return Math.min(run.change().startMin(), run.startMin());
  }

  private static String words(FloorEvent event) {
    return event.words() + ", " + event.source();
  }

  /** A run that is now where this one was and was not there before. */
  private Optional<String> taken(Run was, Run now) {
    if (was.press().equals(now.press()) && now.startMin() < was.startMin()) {
      return Optional.empty();
    }
    return plan.runs().stream()
        .filter(r -> r.press().equals(was.press()) && !r.job().equals(was.job()))
        .filter(r -> begins(r) < was.endMin() && begins(was) < r.endMin())
        .filter(this::isOther)
        .findFirst()
        .map(r -> "its place on " + was.press() + " is taken by " + r.job());
  }

  /** True for a run that is new, moved, or runs for longer than it did. */
  private boolean isOther(Run run) {
    Optional<Run> was = earlier(run.job());
    return was.isEmpty() || isMoved.test(run) || run.endMin() > was.get().endMin();
  }

  private Optional<Run> earlier(String line) {
    return earlier.runs().stream().filter(r -> r.job().equals(line)).findFirst();
  }

  /** The last thing that it waits for beside its press, when it comes later. */
  private Optional<String> waits(Run was, Run now) {
    if (now.startMin() <= was.startMin()) {
      return Optional.empty();
    }
    List<Wait> waits =
        now.waits().stream()
            .filter(w -> w.cause() != Cause.SHIFT && w.cause() != Cause.PRESS)
            .toList();
    if (waits.isEmpty()) {
      return Optional.empty();
    }
    Wait last = waits.get(waits.size() - 1);
    String what = last.what().isEmpty() ? "" : " (" + last.what() + ")";
    String length = " for " + Minutes.words(last.toMin() - last.fromMin());
    return Optional.of(last.cause().words() + what + length + behind(last));
  }

  /** The event behind a wait. */
  private String behind(Wait wait) {
    return moves.events().stream()
        .filter(e -> e.kind() == BY_CAUSE.get(wait.cause()))
        .filter(e -> concerns(e, wait))
        .findFirst()
        .map(e -> ", " + words(e))
        .orElse("");
  }

  private static boolean concerns(FloorEvent event, Wait wait) {
    return switch (wait.cause()) {
      case MOLD_AWAY -> event.what().equals(wait.what());
      case SETTER -> !event.what().equals("operator");
      case OPERATOR -> !event.what().equals("setter");
      default -> true;
    };
  }

  /** The run before it on its press. */
  private Optional<String> pushed(Run was, Run now) {
    Optional<Run> ahead = ahead(plan, now);
    if (now.startMin() > was.startMin()) {
      return ahead
          .map(
              r ->
                  "behind %s on %s, which ends %s later"
                      .formatted(
                          r.job(),
                          r.press(),
                          Minutes.words(
                              Math.max(
                                  0, r.endMin() - earlier(r.job()).map(Run::endMin).orElse(0)))))
          .filter(text -> ahead.flatMap(r -> earlier(r.job())).isPresent());
    }
    return ahead(earlier, was)
        .filter(r -> ahead.isEmpty() || !ahead.get().job().equals(r.job()))
        .map(r -> "%s is no longer before it on %s".formatted(r.job(), was.press()));
  }

  private static Optional<Run> ahead(Plan of, Run run) {
    return of.runs().stream()
        .filter(r -> r.press().equals(run.press()) && r.seq() == run.seq() - 1)
        .findFirst();
  }
}
