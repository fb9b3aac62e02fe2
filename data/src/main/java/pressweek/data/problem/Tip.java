package pressweek.data.problem;

/**
 * A tip, such as that of a clamping stud, which is a material of its own.
 *
 * @param of insert part or item code that has it
 * @param id tip part
 */
public record Tip(String of, String id) {}
