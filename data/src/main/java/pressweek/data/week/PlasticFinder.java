package pressweek.data.week;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import pressweek.data.files.ColourRow;
import pressweek.data.files.Folder.MaterialRows;
import pressweek.data.molding.Amounts;
import pressweek.data.molding.Plastic;
import pressweek.data.molding.Shot;
import pressweek.data.problem.Component;
import pressweek.data.problem.Item;
import pressweek.data.problem.Mold;

/**
 * Resin and masterbatch of a run in grams, where the plant lists lots or deliveries of them.
 * Regrind is not counted on, since it comes only as the run goes on.
 */
final class PlasticFinder {
  private final List<ColourRow> colours;
  private final Set<String> listed = new HashSet<>();

  /**
   * Grams of one material.
   *
   * @param kind resin or masterbatch
   * @param id its id
   * @param grams for the run
   * @param startupGrams further grams for start-up shots
   */
  record Mass(Component kind, String id, int grams, int startupGrams) {}

  PlasticFinder(MaterialRows rows) {
    colours = rows.colours();
    rows.lots().forEach(row -> listed.add(row.what()));
    rows.receipts().forEach(row -> listed.add(row.what()));
  }

  /** True when the plant has a lot or a delivery of it. */
  boolean lists(String what) {
    return listed.contains(what);
  }

  /** What is listed of the plastic of a run, as far as it can be worked out. */
  List<Mass> masses(ReadItem item, Mold mold, long shots, int startupShots) {
    OptionalDouble shotG = shotG(mold);
    OptionalDouble letDown = letDown(item);
    if (shotG.isEmpty() || letDown.isEmpty()) {
      return List.of();
    }
    Plastic run = mix(shots, shotG.getAsDouble(), letDown.getAsDouble());
    Plastic startup = mix(startupShots, shotG.getAsDouble(), letDown.getAsDouble());
    List<Mass> masses = new ArrayList<>();
    String resin = item.value(Item.RESIN);
    if (listed.contains(resin)) {
      masses.add(mass(Component.RESIN, resin, run.naturalKg(), startup.naturalKg()));
    }
    String masterbatch = masterbatch(item);
    if (listed.contains(masterbatch)) {
      masses.add(
          mass(Component.MASTERBATCH, masterbatch, run.masterbatchKg(), startup.masterbatchKg()));
    }
    return masses;
  }

  private static Plastic mix(long shots, double shotG, double letDown) {
    return Plastic.mix(Plastic.shotsKg(shots, 0, shotG), letDown, 0);
  }

  private static Mass mass(Component kind, String id, double kg, double startupKg) {
    return new Mass(kind, id, Amounts.grams(kg), Amounts.grams(startupKg));
  }

  /** What of the plastic of an item is not checked. */
  Set<Gap> gaps(ReadItem item, Mold mold) {
    Set<Gap> gaps = EnumSet.noneOf(Gap.class);
    String resin = item.value(Item.RESIN);
    String masterbatch = masterbatch(item);
    boolean resinOut = !resin.isEmpty() && !listed.contains(resin);
    boolean masterbatchOut = !masterbatch.isEmpty() && !listed.contains(masterbatch);
    if (resinOut || masterbatchOut) {
      gaps.add(Gap.PLASTIC_STOCK);
    }
    boolean any = listed.contains(resin) || listed.contains(masterbatch);
    if (any && (shotG(mold).isEmpty() || letDown(item).isEmpty())) {
      gaps.add(Gap.PLASTIC_GRAMS);
    }
    return gaps;
  }

  private static OptionalDouble shotG(Mold mold) {
    Mold.Cavities cavities = mold.cavities();
    return cavities.partG().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            Shot.grams(
                cavities.live(), cavities.partG().getAsDouble(), cavities.runnerG().orElse(0)));
  }

  /** Masterbatch as a fraction of the total; empty when it is not known. */
  private OptionalDouble letDown(ReadItem item) {
    Optional<ColourRow> colour = colour(item);
    if (colour.isEmpty()) {
      return item.value(Item.COLOUR).isEmpty() ? OptionalDouble.of(0) : OptionalDouble.empty();
    }
    OptionalDouble pct = colour.get().letDownPct();
    if (pct.isPresent()) {
      return OptionalDouble.of(pct.getAsDouble() / 100);
    }
    return colour.get().masterbatch().isEmpty() ? OptionalDouble.of(0) : OptionalDouble.empty();
  }

  private String masterbatch(ReadItem item) {
    return colour(item).map(ColourRow::masterbatch).orElse("");
  }

  private Optional<ColourRow> colour(ReadItem item) {
    String resin = item.value(Item.RESIN);
    List<ColourRow> rows =
        colours.stream().filter(row -> row.colour().equals(item.value(Item.COLOUR))).toList();
    return rows.stream()
        .filter(row -> !resin.isEmpty() && row.resin().equals(resin))
        .findFirst()
        .or(() -> rows.stream().filter(row -> row.resin().isEmpty()).findFirst());
  }
}
