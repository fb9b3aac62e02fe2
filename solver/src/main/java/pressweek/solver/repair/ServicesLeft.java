package pressweek.solver.repair;

import java.util.Comparator;
import java.util.List;
import pressweek.data.problem.MoldService;

/** Shots that molds may still make, after those of runs that have begun. */
final class ServicesLeft {
  private ServicesLeft() {}

  /** A run's shots with its start-up shots: those that it needs, and those that it has made. */
  record Shots(String mold, int beganMin, int needed, int made) {}

  /**
   * Services after some runs. A run that needed more shots than were left came after a service,
   * unless as many were left as there are between two.
   */
  static List<MoldService> after(List<MoldService> services, List<Shots> runs) {
    return services.stream().map(service -> after(service, runs)).toList();
  }

  private static MoldService after(MoldService service, List<Shots> runs) {
    int left = service.shotsLeft();
    List<Shots> own =
        runs.stream()
            .filter(r -> r.mold().equals(service.mold()))
            .sorted(Comparator.comparingInt(Shots::beganMin))
            .toList();
    for (Shots run : own) {
      if (run.needed() > left && left != service.shotsBetween()) {
        left = service.shotsBetween();
      }
      left -= run.made();
    }
    return new MoldService(service.mold(), left, service.shotsBetween(), service.minutes());
  }
}
