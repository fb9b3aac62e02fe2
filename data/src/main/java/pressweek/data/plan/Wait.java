package pressweek.data.plan;

/**
 * A stretch in which a press waited for something before the change or the run of a job.
 *
 * @param cause what it waited for
 * @param what which one: a mold, components separated by {@code |}; may be empty
 * @param fromMin from, minutes since 1970 UTC
 * @param toMin to
 */
public record Wait(Cause cause, String what, int fromMin, int toMin) {}
