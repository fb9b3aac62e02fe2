package pressweek.data.week;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.problem.Job;
import pressweek.data.problem.Link;

/**
 * What came of an order line: one job, or two parts of it.
 *
 * @param jobs its jobs, in the order of their parts
 * @param link how the second builds on the first; empty when it does not
 * @param gaps what could not be checked
 */
record Made(List<Job> jobs, Optional<Link> link, Set<Gap> gaps) {
  Made {
    jobs = List.copyOf(jobs);
    gaps = Set.copyOf(gaps);
  }

  /** A line that is made in one run. */
  static Made of(LineReader.Line line) {
    return new Made(List.of(line.job()), Optional.empty(), line.gaps());
  }
}
