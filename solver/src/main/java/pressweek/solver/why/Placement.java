package pressweek.solver.why;

/**
 * Another place for a line, and what the plan would cost with it there.
 *
 * @param press press
 * @param mold mold
 * @param place place in the press's order, from 1
 * @param after line before it there; empty for none
 * @param startMin start of its run, minutes since 1970 UTC
 * @param lateMin minutes late
 * @param costsMore avoidable cost above that of the plan as it is, thousandths of a cent; less than
 *     0 where the plan would cost less
 */
public record Placement(
    String press,
    String mold,
    int place,
    String after,
    int startMin,
    int lateMin,
    long costsMore) {}
