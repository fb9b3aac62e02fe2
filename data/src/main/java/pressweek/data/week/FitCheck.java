package pressweek.data.week;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import pressweek.data.files.PlantRow;
import pressweek.data.files.PressRow;
import pressweek.data.files.ResinRow;
import pressweek.data.molding.Clamp;
import pressweek.data.molding.MoldFit;
import pressweek.data.molding.Shot;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Orientation;
import pressweek.data.problem.Press;

/**
 * The computed checks of one mold on one press. Each is an estimate: the machine manual and the
 * resin sheet rule.
 */
final class FitCheck {
  private final PlantRow.Fit figures;
  private final Mold mold;
  private final Press.Build build;
  private final Press.Size size;
  private final List<String> objections = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final Set<Gap> gaps = EnumSet.noneOf(Gap.class);
  private boolean checked;

  FitCheck(PlantRow.Fit figures, Mold mold, PressRow press) {
    this.figures = figures;
    this.mold = mold;
    this.build = press.build();
    this.size = press.size();
  }

  List<String> objections() {
    return objections;
  }

  List<String> notes() {
    return notes;
  }

  Set<Gap> gaps() {
    return gaps;
  }

  /** True when there was anything to check with. */
  boolean checked() {
    return checked;
  }

  private boolean gap(boolean missing, Gap gap) {
    if (missing) {
      gaps.add(gap);
    }
    return missing;
  }

  void orientation() {
    Optional<Orientation> needs = mold.body().orientation();
    checked |= needs.isPresent();
    if (needs.isPresent() && needs.get() != build.orientation()) {
      objections.add(words(build.orientation()) + ", " + words(needs.get()) + " needed");
    }
  }

  private static String words(Orientation orientation) {
    return orientation.name().toLowerCase(Locale.ROOT);
  }

  void clamp(Optional<ResinRow> resin) {
    OptionalDouble partArea = mold.cavities().partAreaCm2();
    boolean noMold = gap(partArea.isEmpty(), Gap.CLAMP_MOLD);
    boolean noPress = gap(size.clampKn().isEmpty(), Gap.CLAMP_PRESS);
    if (noMold || noPress) {
      return;
    }
    OptionalDouble pressure = resin.map(ResinRow::cavityKnCm2).orElse(OptionalDouble.empty());
    gap(pressure.isEmpty(), Gap.CLAMP_RESIN);
    double area =
        Clamp.projectedAreaCm2(
            mold.cavities().live(),
            partArea.getAsDouble(),
            mold.cavities().runnerAreaCm2().orElse(0));
    double needed =
        Clamp.forceKn(area, pressure.orElse(figures.cavityKnCm2()), figures.clampFactor());
    checked = true;
    double has = size.clampKn().getAsDouble();
    if (needed > has) {
      objections.add(
          "clamp " + Words.amount(has) + " kN of " + Words.amount(needed) + " kN needed");
    }
  }

  /**
   * A shot beyond the stop is refused unless the press is proven; outside the usual share it is
   * noted.
   */
  void shot(Optional<ResinRow> resin, boolean proven) {
    OptionalDouble partG = mold.cavities().partG();
    OptionalDouble density = resin.map(ResinRow::densityGCm3).orElse(OptionalDouble.empty());
    boolean noMold = gap(partG.isEmpty(), Gap.SHOT_MOLD);
    boolean noPress = gap(size.shotPsG().isEmpty(), Gap.SHOT_PRESS);
    boolean noResin = gap(density.isEmpty(), Gap.SHOT_RESIN);
    if (noMold || noPress || noResin) {
      return;
    }
    double shotG =
        Shot.grams(
            mold.cavities().live(), partG.getAsDouble(), mold.cavities().runnerG().orElse(0));
    double ratedG = size.shotPsG().getAsDouble();
    OptionalDouble share =
        Shot.barrelPct(shotG, ratedG, density.getAsDouble(), figures.psDensityGCm3());
    share.ifPresent(pct -> barrel(pct, proven));
  }

  private void barrel(double pct, boolean proven) {
    checked = true;
    String shot = "shot is " + Words.amount(pct) + " % of the barrel";
    if (pct > figures.shotStopPct() && !proven) {
      objections.add(
          shot + ", above " + Words.amount(figures.shotStopPct()) + " % only where proven");
    } else if (pct < figures.shotLowPct() || pct > figures.shotHighPct()) {
      notes.add(
          "%s, usual is %s-%s %%"
              .formatted(
                  shot, Words.amount(figures.shotLowPct()), Words.amount(figures.shotHighPct())));
    }
  }

  void size() {
    Mold.Body body = mold.body();
    gap(
        body.lengthMm().isEmpty() || body.widthMm().isEmpty() || body.heightMm().isEmpty(),
        Gap.SIZE_MOLD);
    gap(
        size.tieBarXMm().isEmpty() || size.tieBarYMm().isEmpty() || size.moldMaxMm().isEmpty(),
        Gap.SIZE_PRESS);
    MoldFit.Sides sides = new MoldFit.Sides(body.lengthMm(), body.widthMm());
    MoldFit.Sides tieBars = new MoldFit.Sides(size.tieBarXMm(), size.tieBarYMm());
    MoldFit.Sides heights = new MoldFit.Sides(size.moldMinMm(), size.moldMaxMm());
    checked |= sides.known() && tieBars.known();
    checked |= body.heightMm().isPresent() && size.moldMaxMm().isPresent();
    if (!MoldFit.betweenTieBars(sides, tieBars)) {
      objections.add("mold " + words(sides) + " mm, tie bars " + words(tieBars) + " mm");
    }
    if (!MoldFit.height(body.heightMm(), heights)) {
      objections.add(
          "mold height " + Words.amount(body.heightMm().orElse(0)) + " mm, takes " + range());
    }
  }

  private static String words(MoldFit.Sides sides) {
    return Words.amount(sides.first().orElse(0)) + " x " + Words.amount(sides.second().orElse(0));
  }

  private String range() {
    String most =
        size.moldMaxMm().isPresent()
            ? "up to " + Words.amount(size.moldMaxMm().getAsDouble()) + " mm"
            : "more";
    return Words.amount(size.moldMinMm().orElse(0)) + " " + most;
  }

  void opening(double standMm) {
    OptionalDouble heads = mold.body().openingMm();
    boolean noMold = gap(heads.isEmpty(), Gap.OPENING_MOLD);
    boolean noPress = gap(size.openingMm().isEmpty(), Gap.OPENING_PRESS);
    if (noMold || noPress) {
      return;
    }
    checked = true;
    double needed = MoldFit.openingMm(heads.getAsDouble(), standMm, figures.openingClearanceMm());
    double has = size.openingMm().getAsDouble();
    if (needed > has) {
      objections.add(
          "opens " + Words.amount(has) + " mm of " + Words.amount(needed) + " mm needed");
    }
  }
}
