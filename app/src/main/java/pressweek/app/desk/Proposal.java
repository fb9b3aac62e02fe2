package pressweek.app.desk;

import java.util.List;
import pressweek.reports.moves.Moves;

/**
 * A week that a search found, to be taken or left.
 *
 * @param version the version of the week that it started from
 * @param from where it comes from
 * @param by who asked for it
 * @param week the week
 * @param findings what an audit found wrong with it
 * @param moves what it moves
 * @param reported numbers of the floor's reports that it answers
 */
public record Proposal(
    long version,
    From from,
    String by,
    DeskWeek week,
    List<String> findings,
    Moves moves,
    List<Long> reported) {
  /** Where a proposal comes from. */
  public enum From {
    /** The week was solved anew. */
    SOLVE,
    /** Something happened on the floor. */
    FLOOR
  }

  public Proposal {
    findings = List.copyOf(findings);
    reported = List.copyOf(reported);
  }
}
