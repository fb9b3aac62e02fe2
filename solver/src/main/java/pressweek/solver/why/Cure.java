package pressweek.solver.why;

/**
 * Something that would make a line less late, or give it a place; what the plan would be with it.
 *
 * @param what what to do, in words
 * @param placed true when the line has a place then
 * @param lateMin minutes late then
 * @param costsMore avoidable cost above that of the plan as it is, thousandths of a cent, what the
 *     cure itself costs left out; less than 0 where the plan would cost less
 */
public record Cure(String what, boolean placed, int lateMin, long costsMore) {}
