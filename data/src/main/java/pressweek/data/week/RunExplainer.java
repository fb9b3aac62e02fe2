package pressweek.data.week;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.declared.Needs;
import pressweek.data.files.ColourRow;
import pressweek.data.files.DryerRow;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.files.InsertRow;
import pressweek.data.files.OrderRow;
import pressweek.data.files.PressRow;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Regrind;
import pressweek.data.problem.Hub;
import pressweek.data.problem.Item;
import pressweek.data.problem.Mold;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;
import pressweek.data.working.RunFacts;
import pressweek.data.working.RunFacts.Loaded;
import pressweek.data.working.RunWorking;
import pressweek.data.working.Working;

/** Shows the working of a run that a person asks for, whether it may run there or not. */
public final class RunExplainer {
  private static final int SHOWN = 6;

  private final Folder folder;
  private final Shop shop;
  private final boolean guided;
  private final InsertFinder inserts;

  /** An explainer of runs in a plant's folder. */
  public RunExplainer(Folder folder) {
    var guide = Week.guide(folder).guide();
    this.folder = folder;
    this.guided = guide.isPresent();
    this.shop = new Shop(folder, guide, PlantClock.of(folder.plant(), 0));
    this.inserts = new InsertFinder(folder.materials().inserts());
  }

  /**
   * What is asked.
   *
   * @param mold mold
   * @param press press
   * @param item item code
   * @param resin resin, where the code does not say it; empty for the code's own
   * @param colour colour, likewise
   * @param quantity good pieces
   */
  public record Asked(
      String mold, String press, String item, String resin, String colour, int quantity) {}

  /** What is answered. */
  public sealed interface Answer {
    /** The working. */
    record Worked(Working working) implements Answer {}

    /** There is none, because of what is not known to the plant. */
    record Refused(List<String> messages) implements Answer {
      public Refused {
        messages = List.copyOf(messages);
      }
    }
  }

  /** The working of a run; refused when the mold, the press or the item is not the plant's. */
  public Answer explain(Asked asked) {
    List<String> messages = new ArrayList<>();
    Optional<Mold> mold = shop.moldFinder().byId(asked.mold());
    if (mold.isEmpty()) {
      List<String> known = shop.molds().stream().map(Mold::id).toList();
      messages.add(Notes.unknown("mold", asked.mold(), "molds.csv", known));
    }
    Optional<PressRow> press = shop.presses().byId(asked.press());
    if (press.isEmpty()) {
      List<String> known = folder.floor().presses().stream().map(PressRow::press).toList();
      messages.add(Notes.unknown("press", asked.press(), "presses.csv", known));
    }
    Attempt<ReadItem> item =
        shop.items().read(BareOrder.of(asked.item(), asked.resin(), asked.colour()));
    if (item instanceof Stopped<ReadItem> stopped) {
      String about =
          stopped.reason().startsWith("code \"") ? "" : "item \"" + asked.item() + "\": ";
      messages.add(about + stopped.reason());
    } else {
      nameless(asked.item()).ifPresent(messages::add);
    }
    messages.addAll(materials(asked));
    if (!messages.isEmpty()) {
      return new Answer.Refused(messages);
    }
    ReadItem read = ((Done<ReadItem>) item).value();
    return new Answer.Worked(
        RunWorking.of(facts(mold.orElseThrow(), press.orElseThrow(), read, asked.quantity())));
  }

  /** Without a guide an item is only a name, and some mold, order or record has to bear it. */
  private Optional<String> nameless(String item) {
    if (guided) {
      return Optional.empty();
    }
    Set<String> known = new LinkedHashSet<>();
    shop.molds().forEach(mold -> known.addAll(mold.use().makes()));
    folder.demand().orders().stream().map(OrderRow::item).forEach(known::add);
    folder.materials().bom().forEach(row -> known.add(row.item()));
    folder.arranged().family().forEach(row -> known.add(row.item()));
    folder.arranged().stages().forEach(row -> known.addAll(List.of(row.item(), row.core())));
    return known.contains(item.strip())
        ? Optional.empty()
        : Optional.of(Notes.unknown("item", item, "molds.csv makes, orders.csv or bom.csv", known));
  }

  /** A resin or colour that is asked for beside the code, and that the plant has no record of. */
  private List<String> materials(Asked asked) {
    List<String> messages = new ArrayList<>();
    boolean resins = folder.has(InputFile.RESINS);
    if (resins && !asked.resin().isEmpty() && shop.resin(asked.resin()).isEmpty()) {
      messages.add(Notes.unknown("resin", asked.resin(), "resins.csv", shop.resins().keySet()));
    }
    Set<String> colours = new LinkedHashSet<>();
    folder.materials().colours().forEach(row -> colours.add(row.colour()));
    boolean listed = folder.has(InputFile.COLOURS);
    if (listed && !asked.colour().isEmpty() && !colours.contains(asked.colour())) {
      messages.add(Notes.unknown("colour", asked.colour(), "colours.csv", colours));
    }
    return messages;
  }

  private RunFacts facts(Mold mold, PressRow press, ReadItem item, int quantity) {
    Optional<ResinRow> resin = shop.resin(item.value(Item.RESIN));
    PressFit fit =
        shop.presses().fits(mold, resin, item.standMm()).stream()
            .filter(f -> f.press().equals(press))
            .findFirst()
            .orElseThrow();
    boolean solid =
        item.value(Item.HUB).equalsIgnoreCase("solid")
            || mold.use().hub().filter(Hub.SOLID::equals).isPresent();
    List<Loaded> loaded =
        item.inserts().stream()
            .map(
                need ->
                    new Loaded(
                        need.insert(),
                        need.pieces(),
                        need.loadS(),
                        need.standMm(),
                        row(need.insert())))
            .toList();
    return new RunFacts(
        folder.plant(),
        mold,
        press,
        new RunFacts.Made(item.item().code(), quantity, solid, doubt(mold, item)),
        stuff(item, resin, press),
        loaded,
        new RunFacts.Fit(fit.standing(), fit.objection(), fit.notes()),
        pace(mold, press, item));
  }

  private Optional<InsertRow> row(String insert) {
    return inserts.row(insert);
  }

  /** Why the plant's records lead to other molds for this item; empty when they lead to this. */
  private String doubt(Mold mold, ReadItem item) {
    Attempt<List<Mold>> makers = shop.moldFinder().find(item);
    if (makers instanceof Stopped<List<Mold>> stopped) {
      return "no mold of the plant makes this item by its record: " + stopped.reason();
    }
    List<Mold> found = ((Done<List<Mold>>) makers).value();
    return found.contains(mold)
        ? ""
        : "by molds.csv this item is made in "
            + Words.few(found.stream().map(Mold::id).toList(), SHOWN)
            + ", not in "
            + mold.id();
  }

  private RunFacts.Stuff stuff(ReadItem item, Optional<ResinRow> resin, PressRow press) {
    String colour = item.value(Item.COLOUR);
    return new RunFacts.Stuff(
        item.value(Item.RESIN),
        colour,
        resin,
        colour(item.value(Item.RESIN), colour),
        dryer(press),
        regrind(item));
  }

  private Optional<ColourRow> colour(String resin, String colour) {
    List<ColourRow> rows =
        folder.materials().colours().stream().filter(row -> row.colour().equals(colour)).toList();
    Optional<ColourRow> own =
        rows.stream().filter(row -> !resin.isEmpty() && row.resin().equals(resin)).findFirst();
    return own.or(() -> rows.stream().filter(row -> row.resin().isEmpty()).findFirst());
  }

  private Optional<DryerRow> dryer(PressRow press) {
    return folder.floor().dryers().stream()
        .filter(row -> press.dryers().contains(row.dryer()) || row.feeds().contains(press.press()))
        .findFirst();
  }

  private Regrind.Restriction regrind(ReadItem item) {
    Set<String> restricted = new HashSet<>(folder.plant().food().needs());
    restricted.add(Needs.ROHS);
    Set<String> needs = new LinkedHashSet<>(Needs.of(List.of(), item.item()));
    needs.retainAll(restricted);
    if (needs.isEmpty()) {
      return Regrind.Restriction.NONE;
    }
    return shop.declarations()
            .regrindApproved(item.value(Item.RESIN), needs, shop.clock().startMin())
        ? Regrind.Restriction.APPROVED
        : Regrind.Restriction.NOT_APPROVED;
  }

  private RunFacts.Pace pace(Mold mold, PressRow press, ReadItem item) {
    String resin = item.value(Item.RESIN);
    CycleFinder cycles = shop.cycles();
    return new RunFacts.Pace(
        cycles
            .find(mold, resin, press, item.inserts())
            .filter(Timing::recorded)
            .map(RunExplainer::timed),
        cycles.estimate(mold, press, item.inserts()).map(RunExplainer::timed),
        cycles.standard(mold, resin, press),
        cycles.lowerHalves(mold, press));
  }

  private static RunFacts.Timed timed(Timing timing) {
    return new RunFacts.Timed(
        timing.cycleMillis() / 1000.0,
        timing.scrapPct(),
        timing.startupShots(),
        timing.operatorThousandths());
  }
}
