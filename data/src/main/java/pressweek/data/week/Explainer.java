package pressweek.data.week;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.At;
import pressweek.data.files.Folder;
import pressweek.data.files.InputError;
import pressweek.data.files.InputFile;
import pressweek.data.files.OrderRow;
import pressweek.data.files.When;
import pressweek.data.guide.Decoded;
import pressweek.data.guide.GuideReader;
import pressweek.data.problem.Item;
import pressweek.data.problem.Mold;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/** Says what item codes mean in a plant, and which inserts, molds and presses they lead to. */
public final class Explainer {
  private final GuideReader.Result guide;
  private final Shop shop;

  /** An explainer of the codes of a plant's folder. */
  public Explainer(Folder folder) {
    guide = Week.guide(folder);
    shop = new Shop(folder, guide.guide(), PlantClock.of(folder.plant(), 0));
  }

  /** True when the plant has a guide that can be read. */
  public boolean guided() {
    return guide.guide().isPresent();
  }

  /** What is wrong with the guide. */
  public List<InputError> findings() {
    return guide.findings();
  }

  /** What a code leads to; any text is answered. */
  public Explained explain(String code) {
    Optional<Decoded> decoded = guide.guide().map(g -> g.decode(code));
    String family = decoded.map(Decoded::family).orElse("");
    if (decoded.isPresent() && !decoded.get().good()) {
      String faults = String.join("; ", decoded.get().faults());
      return new Explained(code, family, List.of(), List.of(), faults, "correct the code");
    }
    Attempt<ReadItem> item = shop.items().read(order(code));
    if (item instanceof Stopped<ReadItem> stopped) {
      return new Explained(
          code,
          family,
          decoded.map(Decoded::attributes).orElse(List.of()),
          List.of(),
          stopped.reason(),
          stopped.cure());
    }
    return explain(code, family, ((Done<ReadItem>) item).value());
  }

  private Explained explain(String code, String family, ReadItem item) {
    Attempt<List<Mold>> molds = shop.moldFinder().find(item);
    if (molds instanceof Stopped<List<Mold>> stopped) {
      return new Explained(
          code, family, item.item().attributes(), List.of(), stopped.reason(), stopped.cure());
    }
    List<Explained.Maker> makers = new ArrayList<>();
    for (Mold mold : ((Done<List<Mold>>) molds).value()) {
      makers.add(maker(mold, item));
    }
    boolean none = makers.stream().allMatch(maker -> maker.presses().isEmpty());
    return new Explained(
        code,
        family,
        item.item().attributes(),
        makers,
        none ? "no press takes its molds" : "",
        none ? "record a press that runs one of them in molds.csv runs_on" : "");
  }

  private Explained.Maker maker(Mold mold, ReadItem item) {
    List<PressFit> fits =
        shop.presses().fits(mold, shop.resin(item.value(Item.RESIN)), item.standMm());
    List<String> presses =
        fits.stream().filter(PressFit::fits).map(fit -> fit.press().press()).toList();
    List<String> objections =
        fits.stream()
            .filter(fit -> !fit.fits() && presses.isEmpty())
            .map(fit -> fit.press().press() + " " + fit.objection())
            .toList();
    return new Explained.Maker(mold.id(), presses, objections);
  }

  /** An order line that says nothing but its item. */
  private static OrderRow order(String code) {
    return new OrderRow(
        new At(InputFile.ORDERS.fileName(), 0),
        "",
        "",
        "",
        "",
        "",
        "",
        code.strip(),
        "",
        1,
        Optional.empty(),
        new When.Exact(Instant.EPOCH),
        100,
        Optional.empty(),
        List.of(),
        0,
        0,
        "",
        "",
        List.of(),
        "",
        "");
  }
}
