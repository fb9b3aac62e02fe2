package pressweek.data.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.Folder;
import pressweek.data.files.InputError;
import pressweek.data.guide.CodeReading;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideReader;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Item;
import pressweek.data.problem.Mold;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/** Says what item codes mean in a plant, and which inserts, molds and presses they lead to. */
public final class Explainer {
  private final GuideReader.Result read;
  private final Shop shop;

  /** An explainer of the codes of a plant's folder. */
  public Explainer(Folder folder) {
    read = Week.guide(folder);
    shop = new Shop(folder, read.guide(), PlantClock.of(folder.plant(), 0));
  }

  /** What is wrong with the guide. */
  public List<InputError> findings() {
    return read.findings();
  }

  /** The plant's guide; empty when it has none that can be read. */
  public Optional<Guide> guide() {
    return read.guide();
  }

  /** What a code leads to; any text is answered. */
  public Explained explain(String code) {
    return guide()
        .map(g -> explain(g, code))
        .orElseThrow(() -> new IllegalStateException("no guide"));
  }

  private Explained explain(Guide plantGuide, String code) {
    CodeReading reading = plantGuide.explain(code);
    Sofar sofar = new Sofar(plantGuide.encoder().canonical(code.strip()), reading);
    if (!reading.decoded().good()) {
      String faults = String.join("; ", reading.decoded().faults());
      return sofar.stopped(List.of(), faults, "correct the code");
    }
    Attempt<ReadItem> item = shop.items().read(BareOrder.of(code));
    if (item instanceof Stopped<ReadItem> stopped) {
      return sofar.stopped(reading.decoded().attributes(), stopped.reason(), stopped.cure());
    }
    return explain(sofar, ((Done<ReadItem>) item).value());
  }

  /** What is known of a code before its molds are. */
  private record Sofar(String canonical, CodeReading reading) {
    Explained stopped(List<Attribute> attributes, String trouble, String cure) {
      return explained(attributes, List.of(), trouble, cure);
    }

    Explained explained(
        List<Attribute> attributes, List<Explained.Maker> makers, String trouble, String cure) {
      return new Explained(
          reading.decoded().code(), canonical, reading, attributes, makers, trouble, cure);
    }
  }

  private Explained explain(Sofar sofar, ReadItem item) {
    List<Attribute> attributes = item.item().attributes();
    Attempt<List<Mold>> molds = shop.moldFinder().find(item);
    if (molds instanceof Stopped<List<Mold>> stopped) {
      return sofar.stopped(attributes, stopped.reason(), stopped.cure());
    }
    List<Explained.Maker> makers = new ArrayList<>();
    for (Mold mold : ((Done<List<Mold>>) molds).value()) {
      makers.add(maker(mold, item));
    }
    boolean none = makers.stream().allMatch(maker -> maker.presses().isEmpty());
    return sofar.explained(
        attributes,
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
}
