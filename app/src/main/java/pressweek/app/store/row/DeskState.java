package pressweek.app.store.row;

import java.util.Optional;

/**
 * The state of the week that lies on the desk.
 *
 * @param version counts every change of the desk, undo and redo too
 * @param id number of the state itself, the same again after undo and redo
 * @param planNumber number of the plan that it holds
 * @param body the week itself, opaque to the store
 * @param what what was done to come here, in words
 * @param made who made the state, when and why
 * @param undo what an undo would take back, in words; empty if there is nothing
 * @param redo what a redo would do again, in words; empty if there is nothing
 */
public record DeskState(
    long version,
    long id,
    String planNumber,
    Body body,
    String what,
    Change made,
    Optional<String> undo,
    Optional<String> redo) {}
