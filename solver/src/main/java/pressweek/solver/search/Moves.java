package pressweek.solver.search;

import java.util.SplittableRandom;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.Touched;
import pressweek.solver.timing.WeekTables;

/**
 * Moves of a search, each with the way back: a row of jobs to another place, two jobs exchanged, a
 * job held back behind another, an overtime shift opened or closed.
 */
final class Moves {
  private static final int LONGEST_ROW = 6;

  /** The higher, the nearer are the places to which a job moves. */
  private static final int LOCAL = 6;

  /** An overtime shift is opened or closed as often as so many jobs are moved, and at least. */
  private static final int JOBS_A_SHIFT = 20;

  private static final int LEAST_TOGGLES = 5;

  /** Of a thousand moves so many hold a job back; more where there is an earlier plan to keep. */
  private static final int HOLDS = 40;

  private static final int HOLDS_AGAIN = 100;

  /** Where there is an earlier plan, one of so many rows goes back to its place there. */
  private static final int HOMES = 5;

  private final WeekTables week;
  private final Sequences sequences;
  private final Places places;
  private final Neighbours neighbours;
  private final SplittableRandom random;
  private final int jobs;
  private final int[] free;
  private final int overtime;
  private final int[][] eligible;

  /** Of a thousand moves so many open or close an overtime shift. */
  private final int toggles;

  /** Of a thousand moves so many, less those, hold a job back. */
  private final int holds;

  /** Whether there are places of an earlier plan to go back to. */
  private final boolean again;

  private enum Kind {
    ROW,
    SWAP,
    BEHIND,
    OVERTIME
  }

  private final Touched touched = new Touched();
  private Kind kind = Kind.ROW;
  private int fromPress;
  private int fromPlace;
  private int count;
  private int toPress;
  private int toPlace;
  private int before;
  private long openBefore;

  Moves(WeekTables week, Sequences sequences, Neighbours neighbours, SplittableRandom random) {
    this.week = week;
    this.sequences = sequences;
    this.neighbours = neighbours;
    this.random = random;
    places = new Places(week, sequences);
    jobs = week.jobCount();
    free = java.util.stream.IntStream.range(0, jobs).filter(places::isFree).toArray();
    overtime = week.overtimeShifts();
    toggles =
        overtime == 0
            ? 0
            : Math.max(LEAST_TOGGLES, 1000 * overtime / (overtime + JOBS_A_SHIFT * jobs));
    again =
        java.util.Arrays.stream(free)
            .anyMatch(j -> places.press[j] >= 0 && week.hadPlace(j, places.press[j]));
    holds = again ? HOLDS_AGAIN : HOLDS;
    eligible = new int[jobs][];
    for (int j = 0; j < jobs; j++) {
      int job = j;
      eligible[j] =
          java.util.stream.IntStream.range(0, week.pressCount())
              .filter(p -> week.canRun(job, p))
              .toArray();
    }
  }

  /** Whether a move changes sequences, so that a rough model sees what it does. */
  boolean isFiltered() {
    return kind == Kind.ROW || kind == Kind.SWAP;
  }

  boolean any() {
    return free.length > 0 && jobs > 1 || overtime > 0;
  }

  /** Makes a move; false when the one that was drawn changes nothing or is not possible. */
  boolean make() {
    if (free.length == 0) {
      return toggle();
    }
    int draw = random.nextInt(1000);
    if (draw < toggles) {
      return toggle();
    }
    int job = free[random.nextInt(free.length)];
    if (draw < holds && jobs > 2) {
      return holdBack(job);
    }
    if (draw < 300) {
      return swap(job);
    }
    if (draw < 650) {
      return row(job, 1, draw < 450);
    }
    if (draw < 850) {
      return row(job, 2 + random.nextInt(LONGEST_ROW - 1), draw < 750);
    }
    return campaign(job);
  }

  private boolean toggle() {
    kind = Kind.OVERTIME;
    openBefore = sequences.open();
    sequences.open(openBefore ^ (1L << random.nextInt(overtime)));
    return true;
  }

  private boolean holdBack(int job) {
    kind = Kind.BEHIND;
    fromPlace = job;
    before = sequences.behind(job);
    if (before != job && week.hadPlace(job, places.press[job]) && random.nextInt(3) > 0) {
      sequences.keepTime(job);
      return true;
    }
    if (before >= 0 && random.nextInt(3) > 0) {
      sequences.holdBehind(job, -1);
      return true;
    }
    int other = random.nextInt(jobs);
    if (other == job || other == before || places.press[other] == places.press[job]) {
      return false;
    }
    sequences.holdBehind(job, other);
    return true;
  }

  private boolean swap(int job) {
    int p = places.press[job];
    int other = free[random.nextInt(free.length)];
    if (random.nextInt(3) > 0) {
      int size = sequences.size(p) - places.fixed[p];
      int place = around(places.place[job] - places.fixed[p], size, size, true);
      other = sequences.job(p, places.fixed[p] + place);
    }
    int q = places.press[other];
    if (other == job || p != q && !(week.canRun(job, q) && week.canRun(other, p))) {
      return false;
    }
    kind = Kind.SWAP;
    fromPress = p;
    fromPlace = places.place[job];
    toPress = q;
    toPlace = places.place[other];
    sequences.swap(fromPress, fromPlace, toPress, toPlace);
    return true;
  }

  /** A row of jobs from a job on, to a random place or beside a neighbour of it. */
  private boolean row(int job, int length, boolean near) {
    int p = places.press[job];
    int first = places.place[job];
    return target(job, p, first, Math.min(length, sequences.size(p) - first), near);
  }

  /** All jobs of one mold around a job, or the tail of them from it on. */
  private boolean campaign(int job) {
    int p = places.press[job];
    int first = places.place[job];
    int mold = week.firstMold(job);
    int end = first + 1;
    while (end < sequences.size(p) && week.firstMold(sequences.job(p, end)) == mold) {
      end++;
    }
    if (random.nextBoolean()) {
      while (first > places.fixed[p] && week.firstMold(sequences.job(p, first - 1)) == mold) {
        first--;
      }
    }
    return target(sequences.job(p, first), p, first, end - first, random.nextBoolean());
  }

  private boolean target(int job, int p, int first, int length, boolean near) {
    boolean back = again && random.nextInt(HOMES) == 0;
    if (back ? !home(job, p, first) : near ? !beside(job) : !anywhere(job, p, first, length)) {
      return false;
    }
    int q = toPress;
    int place = toPlace;
    if (p == q) {
      if ((near || back) && place > first) {
        place -= Math.min(length, place - first);
      }
      if (place == first || place + length > sequences.size(p)) {
        return false;
      }
    } else if (!allCanRun(p, first, length, q)) {
      return false;
    }
    if (place < places.fixed[q] || first < places.fixed[p]) {
      return false;
    }
    kind = Kind.ROW;
    fromPress = p;
    fromPlace = first;
    count = length;
    toPlace = place;
    sequences.move(p, first, length, q, place);
    return true;
  }

  /** The place after a neighbour of a job. */
  private boolean beside(int job) {
    int[] beside = neighbours.of(job);
    if (beside.length == 0) {
      return false;
    }
    int other = beside[random.nextInt(beside.length)];
    toPress = places.press[other];
    toPlace = places.place[other] + 1;
    return toPress >= 0;
  }

  /** The place that a job had in an earlier plan: before the first job that ran later there. */
  private boolean home(int job, int p, int first) {
    toPress = week.placeBefore(job);
    if (toPress < 0) {
      return false;
    }
    toPlace = sequences.size(toPress);
    for (int i = sequences.size(toPress) - 1; i >= places.fixed[toPress]; i--) {
      int other = sequences.job(toPress, i);
      if (week.placeBefore(other) == toPress && week.ranAfter(other, job)) {
        toPlace = i;
      }
    }
    return toPress != p || toPlace != first + 1;
  }

  /** A place on a press that may run a job. */
  private boolean anywhere(int job, int p, int first, int length) {
    int q = random.nextInt(3) == 0 ? p : eligible[job][random.nextInt(eligible[job].length)];
    int room = sequences.size(q) - places.fixed[q] + (p == q ? 1 - length : 1);
    int through = first - places.fixed[p];
    int of = sequences.size(p) - places.fixed[p];
    toPress = q;
    toPlace = places.fixed[q] + around(through, of, Math.max(1, room), p == q);
    return true;
  }

  private boolean allCanRun(int p, int first, int length, int q) {
    for (int i = first; i < first + length; i++) {
      if (!week.canRun(sequences.job(p, i), q)) {
        return false;
      }
    }
    return true;
  }

  /** Where the sequences differ from before the move; nowhere when they may differ everywhere. */
  Touched touched() {
    touched.clear();
    switch (kind) {
      case ROW -> {
        if (fromPress == toPress) {
          int first = Math.min(fromPlace, toPlace);
          touched.add(fromPress, first, Math.max(fromPlace, toPlace) + count);
        } else {
          touched.add(fromPress, fromPlace, fromPlace);
          touched.add(toPress, toPlace, toPlace + count);
        }
      }
      case SWAP -> {
        if (fromPress == toPress) {
          int first = Math.min(fromPlace, toPlace);
          touched.add(fromPress, first, Math.max(fromPlace, toPlace) + 1);
        } else {
          touched.add(fromPress, fromPlace, fromPlace + 1);
          touched.add(toPress, toPlace, toPlace + 1);
        }
      }
      case BEHIND -> {
        int place = places.place[fromPlace];
        touched.add(places.press[fromPlace], place, place + 1);
      }
      case OVERTIME -> touched.clear();
    }
    return touched;
  }

  /**
   * A place among so many, mostly near one among others: on the same press the same place, on
   * another one the place that is as far through the week.
   */
  private int around(int place, int of, int room, boolean same) {
    double draw = random.nextDouble();
    int offset = (int) (room * Math.pow(draw, LOCAL)) + (same ? 1 : 0);
    int middle = same ? place : (int) ((long) place * room / Math.max(1, of));
    int at = random.nextBoolean() ? middle + offset : middle - offset;
    return at < 0 || at >= room ? random.nextInt(room) : at;
  }

  /** Takes the move back. */
  void undo() {
    switch (kind) {
      case ROW -> sequences.move(toPress, toPlace, count, fromPress, fromPlace);
      case SWAP -> sequences.swap(fromPress, fromPlace, toPress, toPlace);
      case BEHIND -> sequences.holdBehind(fromPlace, before);
      case OVERTIME -> sequences.open(openBefore);
    }
  }

  /** Keeps the move. */
  void keep() {
    if (kind == Kind.ROW || kind == Kind.SWAP) {
      places.renew(sequences, fromPress);
      if (toPress != fromPress) {
        places.renew(sequences, toPress);
      }
    }
  }
}
