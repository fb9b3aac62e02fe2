package pressweek.data.problem;

/**
 * A thing that exists a counted number of times: a tooling set (core pins, nests, a frame) or a
 * device (hot-runner controller, oil heater, gripper, preheat oven).
 *
 * @param id name of the thing, as molds name it
 * @param count how many there are, at least 1
 */
public record CountedThing(String id, int count) {}
