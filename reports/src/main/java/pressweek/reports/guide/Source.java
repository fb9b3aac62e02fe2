package pressweek.reports.guide;

import java.util.Optional;

/** Where questions of one level come from. */
interface Source {
  /**
   * A question drawn at random; empty when this draw gave none.
   *
   * @param turn how many questions there are already, so that their kinds can take turns
   */
  Optional<Question> question(int turn);
}
