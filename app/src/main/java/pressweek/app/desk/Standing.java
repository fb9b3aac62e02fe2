package pressweek.app.desk;

import java.util.List;
import pressweek.app.store.row.DeskState;

/**
 * The week as it stands.
 *
 * @param state how it is kept: its version, who made it, what undo would take back
 * @param week the week
 * @param findings hard rules that an audit found broken, in words; such a plan is not good
 * @param givenOut whether the floor has this very plan
 */
public record Standing(DeskState state, DeskWeek week, List<String> findings, boolean givenOut) {
  public Standing {
    findings = List.copyOf(findings);
  }

  /** The version by which changes say what they start from. */
  public long version() {
    return state.version();
  }
}
