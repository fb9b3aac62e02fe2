package pressweek.app.store.row;

/**
 * A scenario by name.
 *
 * @param name its name
 * @param version counts its changes from 1
 * @param text what it changes, as JSON
 * @param made who made this version, when and why
 */
public record Scenario(String name, long version, String text, Change made) {}
