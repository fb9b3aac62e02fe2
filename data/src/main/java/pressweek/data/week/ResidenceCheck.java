package pressweek.data.week;

import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.files.PlantRow;
import pressweek.data.files.PressRow;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Residence;
import pressweek.data.molding.Shot;
import pressweek.data.problem.Mold;

/**
 * Whether melt stays too long in the barrel: an estimate.
 *
 * @param inventoryG melt in barrel and screw, grams
 * @param shotG grams a shot
 * @param mostMin longest stay that the resin bears, minutes
 */
record ResidenceCheck(double inventoryG, double shotG, double mostMin) {
  /** The check of a mold on a press; empty when a figure is not known. */
  static Optional<ResidenceCheck> of(
      PlantRow.Fit figures, PressRow press, Mold mold, Optional<ResinRow> resin) {
    OptionalDouble partG = mold.cavities().partG();
    OptionalDouble ratedPsG = press.size().shotPsG();
    OptionalDouble density = resin.map(ResinRow::densityGCm3).orElse(OptionalDouble.empty());
    OptionalDouble most = resin.map(ResinRow::residenceMaxMin).orElse(OptionalDouble.empty());
    boolean known = partG.isPresent() && ratedPsG.isPresent() && density.isPresent();
    if (!known || most.isEmpty()) {
      return Optional.empty();
    }
    double ratedG =
        Shot.ratedG(ratedPsG.getAsDouble(), density.getAsDouble(), figures.psDensityGCm3())
            .orElse(0);
    double shotG =
        Shot.grams(
            mold.cavities().live(), partG.getAsDouble(), mold.cavities().runnerG().orElse(0));
    return Optional.of(
        new ResidenceCheck(ratedG * figures.barrelInventory(), shotG, most.getAsDouble()));
  }

  /** What to say of a run at this whole cycle; empty when the melt is out in time. */
  Optional<String> note(double cycleS) {
    return Residence.of(inventoryG, shotG, cycleS)
        .filter(residence -> residence.minutes() > mostMin)
        .map(
            residence ->
                "estimate: melt stays %s min in the barrel, %s min at most"
                    .formatted(Words.amount(residence.minutes()), Words.amount(mostMin)));
  }
}
