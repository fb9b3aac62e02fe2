package pressweek.data.working;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import pressweek.data.files.ColourRow;
import pressweek.data.files.DryerRow;
import pressweek.data.files.InsertRow;
import pressweek.data.files.PlantRow;
import pressweek.data.files.PressRow;
import pressweek.data.files.ResinRow;
import pressweek.data.files.StandardRow;
import pressweek.data.molding.Regrind;
import pressweek.data.molding.Shot;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Standing;

/**
 * What is known of a run of an item in a mold on a press.
 *
 * @param plant the plant's figures
 * @param mold mold
 * @param press press
 * @param made what is made
 * @param plastic what it is made of
 * @param inserts what goes into each part
 * @param fit how the mold goes with the press
 * @param pace its cycles
 */
public record RunFacts(
    PlantRow plant,
    Mold mold,
    PressRow press,
    Made made,
    Stuff plastic,
    List<Loaded> inserts,
    Fit fit,
    Pace pace) {
  public RunFacts {
    inserts = List.copyOf(inserts);
  }

  /**
   * What is made.
   *
   * @param item item code
   * @param quantity good pieces
   * @param solid true when its head is solid
   * @param doubt why the mold may be the wrong one for it; empty when it is not
   */
  public record Made(String item, int quantity, boolean solid, String doubt) {}

  /**
   * What it is made of.
   *
   * @param resinId resin; empty when the item does not say it
   * @param colourId colour; empty likewise
   * @param resin the plant's record of the resin
   * @param colour the plant's record of the colour
   * @param dryer dryer that feeds the press
   * @param regrind whether regrind is held back
   */
  public record Stuff(
      String resinId,
      String colourId,
      Optional<ResinRow> resin,
      Optional<ColourRow> colour,
      Optional<DryerRow> dryer,
      Regrind.Restriction regrind) {}

  /**
   * An insert in each part.
   *
   * @param insert insert part; empty when only its kind is known
   * @param pieces pieces in each part
   * @param loadS seconds to load one by hand; empty for the plant's figure
   * @param standMm how far it stands out of the head, mm
   * @param row its record
   */
  public record Loaded(
      String insert, int pieces, OptionalDouble loadS, double standMm, Optional<InsertRow> row) {}

  /**
   * How the mold goes with the press.
   *
   * @param standing why it may run there
   * @param objection why it may not; empty when it may
   * @param notes what a person should know
   */
  public record Fit(Standing standing, String objection, List<String> notes) {
    public Fit {
      notes = List.copyOf(notes);
    }
  }

  /**
   * The cycles that are known.
   *
   * @param recorded by {@code standards.csv}
   * @param estimated from the mold's own cycle and its loading
   * @param standard the recorded row
   * @param lowerHalves lower halves that work side by side
   */
  public record Pace(
      Optional<Timed> recorded,
      Optional<Timed> estimated,
      Optional<StandardRow> standard,
      int lowerHalves) {
    /** The cycle that counts: the recorded one where there is one. */
    public Optional<Timed> counts() {
      return recorded.or(() -> estimated);
    }
  }

  /**
   * A cycle and what goes with it.
   *
   * @param cycleS whole cycle, loading counted, seconds
   * @param scrapPct scrap, percent of all parts
   * @param startupShots shots thrown away after a change
   * @param operatorThousandths thousandths of an operator that the plan reserves
   */
  public record Timed(double cycleS, double scrapPct, int startupShots, int operatorThousandths) {}

  /** Live cavities of the mold. */
  int live() {
    return mold.cavities().live();
  }

  /** Grams of plastic in a shot; empty when the part's are not known. */
  OptionalDouble shotG() {
    OptionalDouble partG = mold.cavities().partG();
    return partG.isPresent()
        ? OptionalDouble.of(Shot.grams(live(), partG.getAsDouble(), runnerG()))
        : OptionalDouble.empty();
  }

  /** Grams of the runner of a shot; a mold without a figure has none. */
  double runnerG() {
    return mold.cavities().runnerG().orElse(0);
  }

  /** A figure of the resin's record; empty without a record. */
  OptionalDouble resin(Function<ResinRow, OptionalDouble> figure) {
    return plastic.resin().map(figure).orElse(OptionalDouble.empty());
  }
}
