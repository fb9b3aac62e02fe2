package pressweek.data.files;

/**
 * A row of {@code downtime.csv}: a press or a mold that is away, or a mold trial.
 *
 * @param at where it stands
 * @param kind away or trial
 * @param what press or mold; the press of a trial
 * @param from first minute away
 * @param to first minute back
 * @param mold the mold of a trial; empty for any other row
 * @param setters setters who are with a trial
 * @param reason in words; may be empty
 */
public record DowntimeRow(
    At at, Kind kind, String what, When from, When to, String mold, int setters, String reason) {
  /** What a row says. */
  public enum Kind {
    AWAY,
    TRIAL
  }

  /** True for a mold trial. */
  public boolean trial() {
    return kind == Kind.TRIAL;
  }
}
