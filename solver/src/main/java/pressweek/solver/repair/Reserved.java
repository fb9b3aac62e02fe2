package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Making;
import pressweek.data.problem.Option;
import pressweek.data.problem.Take;

/**
 * Shares out anew what is reserved for order lines, when a lot with reserved pieces is on hold:
 * what is no longer there a line takes from free stock.
 */
final class Reserved {
  private final Map<String, Integer> pieces = new HashMap<>();

  private Reserved(List<Lot> lots, int endMin) {
    for (Lot lot : lots) {
      boolean counts =
          lot.status() == LotStatus.USABLE && lot.expiresMin().orElse(Integer.MAX_VALUE) >= endMin;
      if (counts && !lot.reservedFor().isEmpty()) {
        pieces.merge(key(lot.what(), lot.reservedFor()), lot.onHand(), Integer::sum);
      }
    }
  }

  private static String key(String what, String reservedFor) {
    return what + "\n" + reservedFor;
  }

  /** The jobs with no more from reserved lots than there is. */
  static List<Job> within(List<Job> jobs, List<Lot> lots, int endMin) {
    Reserved reserved = new Reserved(lots, endMin);
    return jobs.stream().map(reserved::job).toList();
  }

  private Job job(Job job) {
    Map<String, Integer> most = new HashMap<>();
    List<Option> options = new ArrayList<>();
    for (Option option : job.options()) {
      List<Take> takes = option.making().takes().stream().map(t -> take(job, t)).toList();
      takes.forEach(t -> most.merge(t.insert(), t.reserved(true), Math::max));
      Making making = option.making();
      options.add(
          new Option(
              option.press(),
              option.mold(),
              option.tooling(),
              new Making(
                  making.shots(),
                  making.liveCavities(),
                  making.startupShots(),
                  making.startupGrams(),
                  takes),
              option.pace(),
              option.standing(),
              option.notes()));
    }
    most.forEach((what, number) -> claim(job, what, number));
    return new Job(
        job.line(),
        job.item(),
        job.quantity(),
        job.deadline(),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        options);
  }

  private Take take(Job job, Take take) {
    int there = there(take.insert(), job.id()) + there(take.insert(), job.line().order());
    int own = Math.min(take.reservedPieces(), there);
    int startup = Math.min(take.reservedStartup().orElse(0), there - own);
    int free = take.pieces() + take.reservedPieces() - own;
    int freeStartup = take.startupPieces() + take.reservedStartup().orElse(0) - startup;
    return new Take(take.component(), take.insert(), free, freeStartup, own)
        .withReservedStartup(startup);
  }

  private int there(String what, String reservedFor) {
    return pieces.getOrDefault(key(what, reservedFor), 0);
  }

  private void claim(Job job, String what, int number) {
    int ofLine = Math.min(number, there(what, job.id()));
    pieces.merge(key(what, job.id()), -ofLine, Integer::sum);
    pieces.merge(key(what, job.line().order()), ofLine - number, Integer::sum);
  }
}
