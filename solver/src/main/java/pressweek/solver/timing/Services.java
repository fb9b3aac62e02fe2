package pressweek.solver.timing;

import pressweek.data.problem.MoldService;
import pressweek.data.problem.Problem;
import pressweek.solver.rules.Names;

/** Molds that are serviced after so many shots. */
final class Services {
  private final boolean any;
  private final int[] atStart;
  private final int[] between;
  private final int[] minutes;
  private final int[] left;

  Services(Problem problem, Names names) {
    int n = names.molds().size();
    atStart = new int[n];
    between = new int[n];
    minutes = new int[n];
    left = new int[n];
    boolean found = false;
    for (int m = 0; m < n; m++) {
      for (MoldService service : problem.arranged().services()) {
        if (service.mold().equals(names.molds().get(m))) {
          atStart[m] = service.shotsLeft();
          between[m] = service.shotsBetween();
          minutes[m] = service.minutes();
          found = true;
        }
      }
    }
    any = found;
  }

  void name(Snapshot.Changing all) {
    all.add(left);
  }

  void reset() {
    System.arraycopy(atStart, 0, left, 0, left.length);
  }

  /** Whether a mold must be serviced before it makes so many shots. */
  boolean due(int mold, int shots) {
    return any && between[mold] > 0 && shots > left[mold] && left[mold] < between[mold];
  }

  /** Minutes that the service of a mold takes. */
  int minutes(int mold) {
    return minutes[mold];
  }

  /** A mold makes so many shots, after its service when that is due. */
  void make(int mold, int shots, boolean serviced) {
    if (any) {
      left[mold] = (serviced ? between[mold] : left[mold]) - shots;
    }
  }
}
