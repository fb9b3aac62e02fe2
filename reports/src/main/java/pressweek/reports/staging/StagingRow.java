package pressweek.reports.staging;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.reports.hours.ShiftSpan;

/**
 * A run as a row of the staging list.
 *
 * @param run run
 * @param job its job
 * @param shift the shift that loads it; empty when the plant has no shift near it
 * @param needByMin when it must be there, minutes since 1970 UTC
 * @param batch what is loaded
 * @param drying how it is dried
 * @param cautions what to mind
 * @param notComputed what was not worked out, each with the column that would give it
 */
public record StagingRow(
    Run run,
    Job job,
    Optional<ShiftSpan> shift,
    int needByMin,
    Batch batch,
    DryingStep drying,
    List<String> cautions,
    List<String> notComputed) {
  public StagingRow {
    cautions = List.copyOf(cautions);
    notComputed = List.copyOf(notComputed);
  }

  /**
   * How a resin is dried for a run; what is empty is not known or not needed.
   *
   * @param where where it goes, in words: {@code dryer D2}, {@code hopper at V1}
   * @param dryer dryer; may be empty
   * @param fromMin when drying starts at the latest
   * @param hours hours of drying, those of a cold start counted
   * @param celsius drying temperature
   * @param neededL litres of hopper that it needs
   * @param hopperL litres of the hopper
   */
  public record DryingStep(
      String where,
      String dryer,
      Optional<Integer> fromMin,
      Optional<BigDecimal> hours,
      Optional<BigDecimal> celsius,
      Optional<BigDecimal> neededL,
      Optional<BigDecimal> hopperL) {}

  /** A figure with one decimal or fewer. */
  static Optional<BigDecimal> figure(OptionalDouble value) {
    return value.isEmpty() ? Optional.empty() : Optional.of(figure(value.getAsDouble()));
  }

  private static BigDecimal figure(double value) {
    return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP);
  }

  /** A figure as text, without a decimal that is nought. */
  static String text(double value) {
    String text = figure(value).toPlainString();
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** The id of the shift: {@code 2026-12-01 early}; empty without one. */
  public String shiftId() {
    return shift.map(ShiftSpan::id).orElse("");
  }
}
