package pressweek.data.week;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.declared.Declared;
import pressweek.data.files.ColourRow;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.files.PlantRow;
import pressweek.data.files.ResinRow;
import pressweek.data.guide.Guide;
import pressweek.data.molding.Lightness;
import pressweek.data.problem.Item;
import pressweek.data.problem.Mold;
import pressweek.data.words.WordReader;

/** Everything that order lines are looked up in. */
final class Shop {
  private final Folder folder;
  private final PlantClock clock;
  private final boolean guided;
  private final List<Mold> molds;
  private final Map<String, ResinRow> resins = new LinkedHashMap<>();
  private final Set<String> lightColours = new HashSet<>();
  private final ItemNames names;
  private final ItemReader items;
  private final MoldFinder moldFinder;
  private final PressFinder presses;
  private final CycleFinder cycles;
  private final OptionFinder options;
  private final Families families;
  private final Stages stages;
  private final Reservations reservations;
  private final Tips tips;
  private final Declarations declarations;

  Shop(Folder folder, Optional<Guide> guide, PlantClock clock) {
    this.folder = folder;
    this.clock = clock;
    this.guided = guide.isPresent();
    Folder.MaterialRows rows = folder.materials();
    PlantRow plant = folder.plant();
    InsertFinder inserts = new InsertFinder(rows.inserts());
    rows.resins().forEach(row -> resins.put(row.resin(), row));
    for (ColourRow row : rows.colours()) {
      if (row.rank().isPresent() || Lightness.ofSrgb(row.srgb()).isPresent()) {
        lightColours.add(row.resin() + ":" + row.colour());
      }
    }
    molds = folder.floor().molds().stream().map(row -> FloorBuilder.mold(row, clock)).toList();
    Codes codes = new Codes(guide);
    boolean worded = folder.demand().orders().stream().anyMatch(row -> !row.words().isEmpty());
    names =
        new ItemNames(
            new CustomerParts(folder.demand().customerParts(), codes),
            worded ? guide.map(WordReader::new) : Optional.empty());
    items = new ItemReader(codes, names, inserts, rows.bom());
    moldFinder = new MoldFinder(molds, folder.arranged().family(), items);
    families = new Families(folder.arranged().family(), items);
    stages = new Stages(folder.arranged().stages(), items);
    reservations = new Reservations(rows.lots(), clock);
    presses = new PressFinder(plant.fit(), folder.floor().presses());
    TakeFinder takes = new TakeFinder(plant.run(), reservations, new PlasticFinder(rows));
    cycles = new CycleFinder(plant.run(), folder.floor().standards());
    options =
        new OptionFinder(
            plant, new OptionFinder.Floors(moldFinder, presses), cycles, takes, families);
    tips = new Tips(rows.inserts(), rows.bom(), items::key);
    declarations =
        new Declarations(
            new Declared(KittingBuilder.declarations(rows.records(), clock)), inserts, tips);
  }

  PlantRow plant() {
    return folder.plant();
  }

  PlantClock clock() {
    return clock;
  }

  List<Mold> molds() {
    return molds;
  }

  ItemNames names() {
    return names;
  }

  ItemReader items() {
    return items;
  }

  MoldFinder moldFinder() {
    return moldFinder;
  }

  PressFinder presses() {
    return presses;
  }

  CycleFinder cycles() {
    return cycles;
  }

  OptionFinder options() {
    return options;
  }

  Families families() {
    return families;
  }

  Stages stages() {
    return stages;
  }

  Reservations reservations() {
    return reservations;
  }

  /** True when the planner counts dryers. */
  boolean dryingPlanned() {
    return folder.has(InputFile.DRYERS) && folder.plant().heat().planned();
  }

  Tips tips() {
    return tips;
  }

  Declarations declarations() {
    return declarations;
  }

  /** The plant's resins by id; empty when it has no list of them. */
  Map<String, ResinRow> resins() {
    return resins;
  }

  Optional<ResinRow> resin(String id) {
    return Optional.ofNullable(resins.get(id));
  }

  /** What cannot be checked of what goes into an item. */
  Set<Gap> materialGaps(ReadItem item) {
    Set<Gap> gaps = EnumSet.noneOf(Gap.class);
    String resin = item.value(Item.RESIN);
    String colour = item.value(Item.COLOUR);
    if (resin.isEmpty() || colour.isEmpty()) {
      gaps.add(Gap.RESIN);
    }
    if (!resin.isEmpty() && resin(resin).filter(row -> row.meltC().isPresent()).isEmpty()) {
      gaps.add(Gap.MELT);
    }
    boolean light =
        lightColours.contains(resin + ":" + colour) || lightColours.contains(":" + colour);
    if (!colour.isEmpty() && !light) {
      gaps.add(Gap.COLOUR);
    }
    boolean dried = resin(resin).filter(row -> row.dryH().orElse(0) > 0).isPresent();
    if (dried && !dryingPlanned()) {
      gaps.add(Gap.DRYING);
    }
    boolean nothingSaid = item.inserts().isEmpty() && !guided;
    boolean noNumber =
        item.inserts().stream().anyMatch(need -> need.insert().isEmpty() && !need.core());
    if (nothingSaid || noNumber) {
      gaps.add(Gap.INSERT_PARTS);
    }
    boolean inserted = item.inserts().stream().anyMatch(need -> !need.core());
    if (inserted && !folder.has(InputFile.LOTS)) {
      gaps.add(Gap.INSERT_STOCK);
    }
    return gaps;
  }
}
