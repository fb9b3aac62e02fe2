package pressweek.app.compare;

import pressweek.data.files.Folder;
import pressweek.data.files.Scenario;
import pressweek.data.problem.Problem;

/**
 * A week to plan: the folder as it stands, or with a scenario on top.
 *
 * @param scenario the scenario; {@link Scenario#none} for the folder as it stands
 * @param name how tables call it; no two of a comparison have the same
 * @param out name of its folder in the output
 * @param folder the folder as it was read
 * @param problem the week
 */
public record ScenarioWeek(
    Scenario scenario, String name, String out, Folder folder, Problem problem) {}
