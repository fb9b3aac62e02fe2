package pressweek.data.stress;

/**
 * What it would bring if every line had so much more time before its shipping cut-off, replay by
 * replay under the same luck. It comes from the times at which the lines were ready, so it is exact
 * for the replays and never below nought.
 *
 * @param minutes how much more time
 * @param moreOnTime lines that would be on time beside
 * @param fewerLateHours late hours that it would save, all lines together
 * @param sureLines lines that would be on time in as many replays as the plant wants
 * @param plannedLines lines that would be on time by the plan
 */
public record SlackGain(
    int minutes, Estimate moreOnTime, Estimate fewerLateHours, int sureLines, int plannedLines) {}
