package pressweek.data.week;

import java.util.Optional;
import pressweek.data.files.OrderRow;
import pressweek.data.files.StageRow;
import pressweek.data.week.Attempt.Done;

/**
 * Finds the jobs of an order line: one, two for an item that is molded over a core, or two for a
 * line that is split since it takes long.
 */
final class JobFinder {
  private final Shop shop;
  private final LineReader lines;
  private final LineSplitter splitter;
  private final CoreLines cores;

  JobFinder(Shop shop, LineReader lines, FinishedStock finished) {
    this.shop = shop;
    this.lines = lines;
    this.splitter = new LineSplitter(shop, lines);
    this.cores = new CoreLines(shop, lines, finished);
  }

  /** The jobs of a line that still needs pieces; stopped when one of its parts cannot be made. */
  Attempt<Made> find(OrderRow order, Netted netted) {
    Optional<StageRow> stage = shop.stages().of(order.item());
    return stage.isPresent()
        ? cores.find(order, netted, stage.get())
        : lines
            .read(order, netted)
            .then(
                line ->
                    new Done<>(splitter.split(order, netted, line).orElseGet(() -> Made.of(line))));
  }
}
