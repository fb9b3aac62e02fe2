package pressweek.data.problem;

import java.util.List;

/**
 * What a job takes to make in one mold, whatever the press.
 *
 * @param shots shots for the good pieces and their scrap
 * @param liveCavities cavities that make parts
 * @param startupShots further shots thrown away after a change
 * @param startupGrams resin in those start-up shots, grams; 0 when the shot weight is not known
 * @param takes components taken from stock, each once
 */
public record Making(
    int shots, int liveCavities, int startupShots, int startupGrams, List<Take> takes) {
  public Making {
    takes = List.copyOf(takes);
  }
}
