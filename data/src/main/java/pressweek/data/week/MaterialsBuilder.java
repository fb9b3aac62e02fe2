package pressweek.data.week;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import pressweek.data.files.ColourRow;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.files.InsertRow;
import pressweek.data.files.ReceiptRow;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Lightness;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Component;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Take;

/**
 * Resins, colours, inserts and stock of the week: the plant's rows, and a bare entry for whatever a
 * job or a press has without a row.
 */
final class MaterialsBuilder {
  private final Folder folder;
  private final PlantClock clock;
  private final Reservations reservations;
  private final Map<String, Resin> resins = new LinkedHashMap<>();
  private final Map<ColourKey, Colour> colours = new LinkedHashMap<>();
  private final Map<String, Insert> inserts = new LinkedHashMap<>();
  private final Set<String> stocked = new HashSet<>();

  private record ColourKey(String resin, String colour) {}

  private MaterialsBuilder(Folder folder, Shop shop) {
    this.folder = folder;
    this.clock = shop.clock();
    this.reservations = shop.reservations();
  }

  /** The materials of a week. */
  static Materials build(Folder folder, Shop shop, List<Job> jobs, List<Setup> setups) {
    MaterialsBuilder builder = new MaterialsBuilder(folder, shop);
    builder.rows();
    for (Job job : jobs) {
      builder.bare(job.resin(), job.colour());
      job.options().stream()
          .flatMap(option -> option.making().takes().stream())
          .forEach(builder::bareTake);
    }
    setups.forEach(setup -> builder.bare(setup.resin(), setup.colour()));
    return new Materials(
        List.copyOf(builder.resins.values()),
        List.copyOf(builder.colours.values()),
        List.copyOf(builder.inserts.values()),
        builder.stock(),
        Optional.of(PreparationBuilder.build(folder)));
  }

  private void rows() {
    folder.materials().resins().forEach(row -> resins.put(row.resin(), resin(row)));
    for (ColourRow row : folder.materials().colours()) {
      colours.put(new ColourKey(row.resin(), row.colour()), colour(row));
    }
    folder.materials().inserts().forEach(row -> inserts.put(row.insert(), insert(row)));
  }

  private static Resin resin(ResinRow row) {
    return new Resin(
        row.resin(),
        row.grade(),
        row.densityGCm3(),
        row.meltC(),
        row.cavityKnCm2(),
        row.pricePerKg().orElse(0),
        row.barrel(),
        row.neverNextTo());
  }

  private static Colour colour(ColourRow row) {
    OptionalDouble lightness =
        row.rank().isPresent()
            ? OptionalDouble.of(100 - row.rank().getAsDouble())
            : Lightness.ofSrgb(row.srgb());
    return new Colour(row.resin(), row.colour(), row.name(), row.srgb(), lightness);
  }

  private static Insert insert(InsertRow row) {
    return new Insert(
        row.insert(),
        row.kind(),
        row.thread(),
        row.lengthMm(),
        row.material(),
        row.finish(),
        row.passivation(),
        row.loadS(),
        Optional.of(row.tip()).filter(tip -> !tip.isEmpty()));
  }

  private void bare(String resin, String colour) {
    if (!resin.isEmpty()) {
      resins.computeIfAbsent(
          resin,
          id ->
              new Resin(
                  id,
                  "",
                  OptionalDouble.empty(),
                  OptionalDouble.empty(),
                  OptionalDouble.empty(),
                  0,
                  Barrel.STANDARD,
                  List.of()));
    }
    if (!colour.isEmpty() && !colours.containsKey(new ColourKey(resin, colour))) {
      colours.computeIfAbsent(
          new ColourKey("", colour), key -> new Colour("", colour, "", "", OptionalDouble.empty()));
    }
  }

  private void bareTake(Take take) {
    stocked.add(take.insert());
    if (take.component() == Component.INSERT) {
      bareInsert(take.insert());
    }
  }

  private void bareInsert(String insert) {
    inserts.computeIfAbsent(
        insert,
        id -> new Insert(id, "", "", OptionalDouble.empty(), "", "", "", OptionalDouble.empty()));
  }

  /** Stock of what runs take, and of every insert part, which might do in the place of another. */
  private Stock stock() {
    stocked.addAll(inserts.keySet());
    List<Lot> lots =
        folder.materials().lots().stream()
            .filter(row -> stocked.contains(row.what()))
            .map(row -> KittingBuilder.lot(row, clock))
            .map(this::held)
            .toList();
    List<Receipt> receipts =
        folder.materials().receipts().stream()
            .filter(row -> stocked.contains(row.what()))
            .map(this::receipt)
            .toList();
    return new Stock(folder.has(InputFile.LOTS), lots, receipts);
  }

  /** A lot that is reserved for a line in parts serves the part that takes it. */
  private Lot held(Lot lot) {
    return new Lot(
        lot.what(),
        lot.id(),
        lot.bin(),
        lot.onHand(),
        lot.receivedMin(),
        lot.expiresMin(),
        lot.status(),
        reservations.holder(lot.what(), lot.reservedFor()));
  }

  private Receipt receipt(ReceiptRow row) {
    int expected = clock.minute(row.expected());
    return new Receipt(row.what(), row.quantity().count(), expected, expected + row.inspectMin());
  }
}
