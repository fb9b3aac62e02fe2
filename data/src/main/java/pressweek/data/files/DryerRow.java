package pressweek.data.files;

import java.util.List;

/**
 * A row of {@code dryers.csv}: a dryer.
 *
 * @param at where it stands
 * @param dryer dryer
 * @param hopperL what its hopper holds, litres
 * @param feeds presses that it feeds, beside those that name it in their own row
 */
public record DryerRow(At at, String dryer, double hopperL, List<String> feeds) {
  public DryerRow {
    feeds = List.copyOf(feeds);
  }
}
