package pressweek.app.store.row;

/**
 * A state of the week to be laid on the desk.
 *
 * @param planNumber number of the plan that it holds
 * @param body the week itself, opaque to the store
 * @param what what was done to come here, in words: "moved 4711/2 to H6"
 * @param made who did it, when and why
 */
public record NewState(String planNumber, Body body, String what, Change made) {}
