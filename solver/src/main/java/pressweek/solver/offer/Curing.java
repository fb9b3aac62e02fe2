package pressweek.solver.offer;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.solver.StopSign;
import pressweek.solver.timing.WeekTables;
import pressweek.solver.why.Candidates;
import pressweek.solver.why.PlantChange;
import pressweek.solver.why.Replay;

/**
 * Tries what the plant could change so that a new line is there in time with nobody made late: what
 * would cure a late line of a plan, and overtime shifts that the plan may open. Whoever is late for
 * it is so against the plan that stands, without the change.
 */
public final class Curing {
  /** Changes tried at most. */
  private static final int MOST_CHANGES = 30;

  /** Places tried for one run with one change at most, spread over all of them. */
  private static final int MOST_PLACES = 400;

  private static final Comparator<Help> BEST =
      Comparator.comparing(Help::gain)
          .thenComparingInt(
              h ->
                  h.gain() == Help.Gain.SOONER
                      ? h.offer().promisedMin()
                      : h.offer().price().later().size())
          .thenComparingLong(h -> h.offer().price().costsMore())
          .thenComparingInt(h -> h.offer().readyMin());

  private final Before before;
  private final NewLine line;
  private final Offers offers;
  private final int needMin;
  private final StopSign stop;
  private int places;

  private Curing(Before before, NewLine line, Offers offers, int needMin, StopSign stop) {
    this.before = before;
    this.line = line;
    this.offers = offers;
    this.needMin = needMin;
    this.stop = stop;
  }

  /** A change of the week, or of what the plan opens in it. */
  private record Change(String words, Problem problem, List<PlantWide.Opened> opened) {}

  /**
   * What helps.
   *
   * @param basis the plan without the new line
   * @param problem its problem with the jobs of the new line at the end
   * @param offers what was found without a change
   * @param needMin when the new line should be ready, minutes since 1970 UTC
   * @param stop ends it with what has been found
   */
  public static Cures of(Basis basis, Problem problem, Offers offers, int needMin, StopSign stop) {
    NewLine line = NewLine.in(problem, basis.standing().problem());
    return new Curing(new Before(basis), line, offers, needMin, stop).cures();
  }

  private Cures cures() {
    List<Change> changes = changes();
    List<Help> helping = new ArrayList<>();
    List<String> tried = new ArrayList<>();
    for (Change change : changes) {
      if (stop.isGiven()) {
        break;
      }
      help(change).ifPresent(helping::add);
      if (!stop.isGiven()) {
        tried.add(change.words());
      }
    }
    helping.sort(BEST);
    return new Cures(changes.size(), tried, places, helping);
  }

  /** By what each run of the line waits for in the answers; without any, by what it lacks. */
  private List<Change> changes() {
    Map<String, Change> found = new LinkedHashMap<>();
    List<Plan> plans = new ArrayList<>();
    answers().forEach(offer -> plans.add(offer.plan().with(line.problem())));
    if (plans.isEmpty()) {
      plans.add(Replay.of(line.problem(), before.standing()));
    }
    overtime().forEach(change -> found.put(change.words(), change));
    for (Plan plan : plans) {
      for (Job job : line.problem().jobs()) {
        if (line.jobs().contains(job.id())) {
          for (PlantChange change : Candidates.of(plan, job)) {
            found.putIfAbsent(
                change.words(), new Change(change.words(), change.problem(), List.of()));
          }
        }
      }
    }
    return found.values().stream().limit(MOST_CHANGES).toList();
  }

  /** Overtime shifts that the plan leaves closed, and that begin before the line is needed. */
  private List<Change> overtime() {
    List<PlantWide.Opened> open = before.standing().head().plantWide().opened();
    return new WeekTables(line.problem())
        .overtime().stream()
            .filter(shift -> !open.contains(shift) && shift.fromMin() < needMin)
            .map(shift -> new Change(words(shift), line.problem(), List.of(shift)))
            .toList();
  }

  private String words(PlantWide.Opened shift) {
    LocalDate day =
        Instant.ofEpochSecond(shift.fromMin() * 60L)
            .atZone(line.problem().plant().hours().zone())
            .toLocalDate();
    return "overtime shift %s opened on %s".formatted(shift.shift(), day);
  }

  private Stream<Offer> answers() {
    return Stream.of(offers.unharmed(), offers.byNeed(), offers.soonest())
        .flatMap(Optional::stream);
  }

  private Optional<Help> help(Change change) {
    NewLine changed = new NewLine(change.problem(), line.jobs()).unhurried();
    Bests bests = new Bests(needMin);
    Insertion insertion = new Insertion(before, changed, needMin, MOST_PLACES, stop);
    answers()
        .map(offer -> insertion.replay(opened(offer.plan(), change)))
        .forEach(plan -> insertion.take(plan, bests));
    Plan standing = opened(before.standing(), change);
    insertion.into(insertion.replay(standing), bests);
    places += insertion.tried();
    return help(change.words(), bests);
  }

  private Optional<Help> help(String what, Bests bests) {
    int soonest = offers.unharmed().map(Offer::promisedMin).orElse(Integer.MAX_VALUE);
    Optional<Help> best = bests.inTime().map(o -> new Help(what, Help.Gain.IN_TIME, o));
    if (offers.byNeed().isEmpty()) {
      best = best.or(() -> bests.byNeed().map(o -> new Help(what, Help.Gain.BY_NEED, o)));
    }
    return best.or(
            () ->
                bests
                    .unharmed()
                    .filter(o -> o.promisedMin() < soonest)
                    .map(o -> new Help(what, Help.Gain.SOONER, o)))
        .or(
            () ->
                bests
                    .byNeed()
                    .filter(this::isPaidByFewer)
                    .map(o -> new Help(what, Help.Gain.FEWER_PAY, o)));
  }

  /** Whether fewer lines pay than without a change, and it costs no more. */
  private boolean isPaidByFewer(Offer offer) {
    return offers
        .byNeed()
        .map(Offer::price)
        .filter(was -> offer.price().later().size() < was.later().size())
        .filter(was -> offer.price().costsMore() <= was.costsMore())
        .isPresent();
  }

  private static Plan opened(Plan plan, Change change) {
    if (change.opened().isEmpty()) {
      return plan;
    }
    Head head = plan.head();
    PlantWide was = head.plantWide();
    List<PlantWide.Opened> all = new ArrayList<>(was.opened());
    change.opened().stream().filter(shift -> !all.contains(shift)).forEach(all::add);
    PlantWide more = new PlantWide(all, was.held(), was.dryings(), was.charges(), Optional.empty());
    return plan.with(
        new Head(
            head.number(),
            head.replaces(),
            head.madeMin(),
            head.inputs(),
            head.settings(),
            head.references(),
            head.stopped(),
            Optional.of(more)));
  }
}
