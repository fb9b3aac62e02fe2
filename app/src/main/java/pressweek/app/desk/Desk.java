package pressweek.app.desk;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import pressweek.app.plan.ChangedInputs;
import pressweek.app.plan.EarlierPlans;
import pressweek.app.plan.PlanNumber;
import pressweek.app.plan.WeekPlanner;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.DeskState;
import pressweek.app.store.row.GivenPlan;
import pressweek.app.store.row.NewState;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.solver.Finishing;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;
import pressweek.solver.why.Replay;

/**
 * The week on the scheduler's desk. Every change names the version it starts from, so that nobody
 * overwrites another silently; it is kept before it is answered. For use by several threads.
 */
public final class Desk {
  /** Plans given out whose numbers are looked at for the next one. */
  private static final int MOST_PLANS = 1_000;

  /** States of the week that can be gone back to. */
  private static final int MOST_STATES = 200;

  private final Store store;
  private final FolderLook folder;
  private final Clock clock;
  private final List<Consumer<DeskEvent>> listeners = new CopyOnWriteArrayList<>();
  private final Hands hands = new Hands();
  private volatile Present present = Present.NONE;

  /** The week as it was last read from the store, and the plan that had been given out then. */
  private record Present(Optional<Standing> standing, String given) {
    static final Present NONE = new Present(Optional.empty(), "");

    boolean is(long version, String given) {
      return standing.filter(s -> s.version() == version).isPresent() && this.given.equals(given);
    }
  }

  /**
   * A desk on a store.
   *
   * @param store where the week is kept
   * @param folder the plant's folder
   * @param clock the present
   */
  public Desk(Store store, FolderLook folder, Clock clock) {
    this.store = store;
    this.folder = folder;
    this.clock = clock;
  }

  /** Tells of every change from now on. */
  public void listen(Consumer<DeskEvent> listener) {
    listeners.add(listener);
  }

  /** Tells a listener no more. */
  public void unlisten(Consumer<DeskEvent> listener) {
    listeners.remove(listener);
  }

  /** Tells everybody who listens. */
  public void tell(DeskEvent event) {
    listeners.forEach(l -> l.accept(event));
  }

  /** The folder. */
  public FolderLook folder() {
    return folder;
  }

  /** The store. */
  public Store store() {
    return store;
  }

  /** The present. */
  public Instant now() {
    return clock.instant();
  }

  /** The present in minutes since 1970 UTC. */
  public int nowMin() {
    return Math.toIntExact(Math.floorDiv(now().getEpochSecond(), 60));
  }

  /**
   * The week as it stands; empty while there has been none. Whoever looks at it waits for nobody
   * who is changing it.
   */
  public Optional<Standing> standing() throws StoreTrouble {
    Present there = present;
    return there.is(store.deskStates().version(), given()) ? there.standing() : read();
  }

  private synchronized Optional<Standing> read() throws StoreTrouble {
    long version = store.deskStates().version();
    String given = given();
    if (present.standing().filter(s -> s.version() == version).isEmpty()) {
      Optional<DeskState> kept = store.deskStates().current();
      present =
          kept.isPresent() ? new Present(Optional.of(stand(kept.get())), given) : Present.NONE;
    } else if (!present.given().equals(given)) {
      Standing there = present.standing().get();
      boolean out = isGivenOut(there.week().plan());
      Standing now = new Standing(there.state(), there.week(), there.findings(), out);
      present = new Present(Optional.of(now), given);
    }
    return present.standing();
  }

  /** Number of the plan that was given out last, here or by another server; empty for none. */
  private String given() throws StoreTrouble {
    return store.plans().heads(1).stream().map(GivenPlan.Head::number).findFirst().orElse("");
  }

  private Standing stand(DeskState state) throws StoreTrouble {
    DeskWeek week = DeskWeek.of(state.body());
    return new Standing(state, week, findings(week.plan()), isGivenOut(week.plan()));
  }

  private boolean isGivenOut(Plan plan) throws StoreTrouble {
    return store.plans().byNumber(plan.head().number()).isPresent();
  }

  static List<String> findings(Plan plan) {
    return Audit.check(plan.problem(), plan).stream().map(Finding::message).toList();
  }

  /**
   * Plans the week of the folder, where none lies on the desk.
   *
   * @param settings how long to search
   * @param watcher told of every better plan
   * @return the week; empty when the folder has errors
   */
  public Optional<Standing> begin(Settings settings, String by, Watcher watcher)
      throws StoreTrouble, IOException {
    Optional<Standing> there = standing();
    FolderLook.Look look = folder.look();
    if (there.isPresent() || look.week().problem().isEmpty()) {
      return there;
    }
    WeekPlanner planner = new WeekPlanner(look.folder(), look.week().problem().get());
    EarlierPlans earlier = new EarlierPlans(lastGivenOut(), numbers(), List.of());
    Plan plan = planner.plan(earlier, settings, nowMin(), watcher).plan();
    Change change = Change.of(by, now());
    put(new DeskWeek(plan, Marks.NONE), "planned the week", 0, change);
    store.fileMarks().take(look.folder().inputs(), change);
    return standing();
  }

  private List<String> numbers() throws StoreTrouble {
    return store.plans().heads(MOST_PLANS).stream().map(GivenPlan.Head::number).toList();
  }

  /** The plan that the floor has; empty while it has none. */
  public Optional<Plan> lastGivenOut() throws StoreTrouble {
    return store.plans().latest().map(g -> DeskWeek.of(g.body()).plan());
  }

  /** The plan that was given out under a number; empty when none was. */
  public Optional<Plan> givenOut(String number) throws StoreTrouble {
    return store.plans().byNumber(number).map(g -> DeskWeek.of(g.body()).plan());
  }

  /** What a move of the week that stands would do; words when it cannot be made. */
  public TrialAnswer tried(long version, Edit.Move move) throws StoreTrouble {
    Optional<Standing> now = standing();
    if (now.isEmpty() || now.get().version() != version) {
      return new TrialAnswer.Old(now.map(Standing::version).orElse(0L));
    }
    return hands.on(now.get(), editing -> tried(editing, move));
  }

  private static TrialAnswer tried(Editing editing, Edit.Move move) {
    Optional<String> objection = editing.objection(move.line(), move.press());
    return objection.isPresent()
        ? new TrialAnswer.No(objection.get())
        : new TrialAnswer.Yes(Trial.of(editing.order(), move));
  }

  /** What came of a trial. */
  public sealed interface TrialAnswer {
    /** The move can be made. */
    record Yes(Trial trial) implements TrialAnswer {}

    /** It cannot; why, in a sentence. */
    record No(String why) implements TrialAnswer {}

    /** The week is another by now. */
    record Old(long version) implements TrialAnswer {}
  }

  /** The order of the week that stands, to ask places of; none while there is no week. */
  public <T> Optional<T> asked(Function<Editing, T> question) throws StoreTrouble {
    return standing().map(now -> hands.on(now, question));
  }

  private Edited edited(Edit edit) throws StoreTrouble, IOException {
    if (!(edit instanceof Edit.Split) && !(edit instanceof Edit.Join)) {
      return hands.on(standing().orElseThrow(), editing -> editing.edit(edit));
    }
    Standing now = standing().orElseThrow();
    if (!filesChanged(now).isEmpty()) {
      return new Edited.Refused("files of the folder are not as they were; take them first");
    }
    Splitting splitting = new Splitting(folder.look().folder(), folder.nowMin());
    return edit instanceof Edit.Split split
        ? splitting.split(now.week(), split)
        : splitting.join(now.week(), (Edit.Join) edit);
  }

  /** Makes an edit. */
  public synchronized Taken edit(long version, Edit edit, Change change)
      throws StoreTrouble, IOException {
    Optional<Taken> old = old(version);
    if (old.isPresent()) {
      return old.get();
    }
    Edited edited = edited(edit);
    if (edited instanceof Edited.Refused refused) {
      return new Taken.Refused(refused.why());
    }
    Edited.Done done = (Edited.Done) edited;
    return keep(done.week(), done.what(), version, change);
  }

  /** Why a version is not the one that stands; empty when it is. */
  synchronized Optional<Taken> old(long version) throws StoreTrouble {
    Optional<Standing> now = standing();
    if (now.isEmpty()) {
      return Optional.of(new Taken.Refused("there is no week yet; see the messages of the files"));
    }
    DeskState state = now.get().state();
    return state.version() == version
        ? Optional.empty()
        : Optional.of(
            new Taken.Stale(state.version(), state.what(), state.made().by(), state.made().at()));
  }

  /** Lays a week on the desk. */
  synchronized Taken keep(DeskWeek week, String what, long version, Change change)
      throws StoreTrouble {
    DeskWeek numbered = numbered(week);
    List<String> findings = findings(numbered.plan());
    boolean out = isGivenOut(numbered.plan());
    String given = given();
    Answer<DeskState> answer = put(numbered, what, version, change);
    if (answer instanceof Answer.Done<DeskState> done) {
      // Made before whoever looks asks for it, so that nobody waits for it to be read back.
      Standing now = new Standing(done.value(), numbered, findings, out);
      present = new Present(Optional.of(now), given);
    }
    Taken taken = taken(answer, change.by());
    store.deskStates().prune(MOST_STATES);
    return taken;
  }

  private Answer<DeskState> put(DeskWeek week, String what, long version, Change change)
      throws StoreTrouble {
    String number = week.plan().head().number();
    return store.deskStates().put(new NewState(number, week.body(), what, change), version);
  }

  private Taken taken(Answer<DeskState> answer, String by) throws StoreTrouble {
    if (answer instanceof Answer.Stale<DeskState> s) {
      return new Taken.Stale(s.version(), s.what(), s.by(), s.at());
    }
    if (answer instanceof Answer.Nothing) {
      return new Taken.Refused("there is nothing to take back or to do again");
    }
    DeskState state = ((Answer.Done<DeskState>) answer).value();
    tell(new DeskEvent.Changed(state.version(), by, state.what()));
    return new Taken.Done(standing().orElseThrow());
  }

  /**
   * A plan whose number the floor has is another by now, and gets the next number; so does one that
   * begins in another week than its number says.
   */
  private DeskWeek numbered(DeskWeek week) throws StoreTrouble {
    Head head = week.plan().head();
    Optional<Plan> given = lastGivenOut();
    Hours hours = week.plan().problem().plant().hours();
    boolean used = isGivenOut(week.plan()) || !PlanNumber.isOfWeek(head.number(), hours);
    String replaces = given.map(p -> p.head().number()).orElse("");
    if (!used && head.replaces().equals(replaces)) {
      return week;
    }
    EarlierPlans earlier = new EarlierPlans(given, numbers(), List.of());
    PlanNumber next = PlanNumber.after(earlier, hours);
    String number = used ? next.number() : head.number();
    return new DeskWeek(Heads.with(week.plan(), number, replaces), week.marks());
  }

  /** Takes the last change back. */
  public synchronized Taken undo(long version, Change change) throws StoreTrouble {
    Optional<Taken> old = old(version);
    return old.isPresent()
        ? old.get()
        : taken(store.deskStates().undo(version, change), change.by());
  }

  /** Makes the change again that was taken back last. */
  public synchronized Taken redo(long version, Change change) throws StoreTrouble {
    Optional<Taken> old = old(version);
    return old.isPresent()
        ? old.get()
        : taken(store.deskStates().redo(version, change), change.by());
  }

  /** Gives the plan out to the floor. A plan that an audit rejects is not given out. */
  public synchronized Taken giveOut(long version, Change change) throws StoreTrouble {
    Optional<Taken> old = old(version);
    if (old.isPresent()) {
      return old.get();
    }
    Standing now = standing().orElseThrow();
    String number = now.week().plan().head().number();
    if (now.givenOut()) {
      return new Taken.Refused("the floor has plan " + number + " already");
    }
    if (!now.findings().isEmpty()) {
      return new Taken.Refused("the audit rejects the plan: " + now.findings().get(0));
    }
    store.plans().give(new GivenPlan(number, now.week().body(), change));
    present = Present.NONE;
    tell(new DeskEvent.Changed(version, change.by(), "gave out plan " + number));
    return new Taken.Done(standing().orElseThrow());
  }

  /** Takes the files of the folder as they are now; lines keep their places where they can. */
  public synchronized Taken takeFiles(long version, Change change)
      throws StoreTrouble, IOException {
    Optional<Taken> old = old(version);
    if (old.isPresent()) {
      return old.get();
    }
    FolderLook.Look look = folder.look();
    DeskWeek week = standing().orElseThrow().week();
    Optional<Problem> problem = new Splitting(look.folder(), folder.nowMin()).problem(week.marks());
    if (problem.isEmpty()) {
      return new Taken.Refused("the files have errors; correct them first");
    }
    DeskWeek taken = onFiles(week, look, problem.get());
    Taken answer = keep(taken, "took the files of the folder", version, change);
    if (answer instanceof Taken.Done) {
      store.fileMarks().take(look.folder().inputs(), change);
    }
    return answer;
  }

  private DeskWeek onFiles(DeskWeek week, FolderLook.Look look, Problem problem) {
    Plan plan = week.plan();
    Set<String> lines = problem.jobs().stream().map(Job::id).collect(Collectors.toSet());
    Marks marks = week.marks().of(lines);
    Problem promised = Promised.in(problem, plan);
    Plan replayed = Replay.of(promised, plan);
    Map<String, String> inputs = new HashMap<>(look.folder().inputs());
    Plan done = Finishing.of(Heads.with(plan.head(), inputs), replayed, plan);
    return new DeskWeek(done, marks);
  }

  /** Names of files that are not as they were when the week was made, in words. */
  public List<String> filesChanged(Standing now) throws IOException {
    Map<String, String> inputs = folder.look().folder().inputs();
    return new ArrayList<>(ChangedInputs.words(now.week().plan().head().inputs(), inputs));
  }
}
