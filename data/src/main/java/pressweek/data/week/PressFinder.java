package pressweek.data.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.PlantRow;
import pressweek.data.files.PressRow;
import pressweek.data.files.ResinRow;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Standing;

/**
 * Finds the presses that a mold may run on. The plant's record wins over every computed check; only
 * the barrel must suit the resin whatever the record of the mold says, and a shot beyond the stop
 * needs a proven press.
 */
final class PressFinder {
  private final PlantRow.Fit figures;
  private final List<PressRow> presses;
  private final Map<Case, List<PressFit>> answers = new HashMap<>();

  private record Case(String mold, String resin, double standMm) {}

  PressFinder(PlantRow.Fit figures, List<PressRow> presses) {
    this.figures = figures;
    this.presses = presses;
  }

  /** The press of this id. */
  Optional<PressRow> byId(String id) {
    return presses.stream().filter(press -> press.press().equals(id)).findFirst();
  }

  /**
   * How a mold goes with every press: those that it may run on first, the preferred one at their
   * head, then the best standing.
   *
   * @param resin the resin; empty when the plant has no record of it
   * @param standMm how far an insert stands out of the head
   */
  List<PressFit> fits(Mold mold, Optional<ResinRow> resin, double standMm) {
    Case asked = new Case(mold.id(), resin.map(ResinRow::resin).orElse(""), standMm);
    return answers.computeIfAbsent(
        asked,
        c ->
            presses.stream()
                .map(press -> fit(mold, resin, standMm, press))
                .sorted(
                    Comparator.comparing((PressFit fit) -> !fit.fits())
                        .thenComparing(fit -> !preferred(mold, fit))
                        .thenComparing(PressFit::standing))
                .toList());
  }

  private static boolean preferred(Mold mold, PressFit fit) {
    return mold.runsOn().preferred().filter(fit.press().press()::equals).isPresent();
  }

  private PressFit fit(Mold mold, Optional<ResinRow> resin, double standMm, PressRow press) {
    Mold.RunsOn record = mold.runsOn();
    String id = press.press();
    boolean proven =
        record.proven().contains(id) || record.preferred().filter(id::equals).isPresent();
    boolean allowed = record.allowed().contains(id);
    boolean recorded =
        !record.proven().isEmpty() || !record.allowed().isEmpty() || record.preferred().isPresent();
    Optional<String> objection = barrelObjection(resin, press);
    if (record.never().contains(id)) {
      objection = Optional.of("never, by its record");
    } else if (recorded && !proven && !allowed) {
      objection = Optional.of("not among the presses of its record");
    }
    if (objection.isPresent()) {
      return new PressFit(press, Standing.UNCHECKED, objection.get(), List.of(), Set.of());
    }
    FitCheck check = new FitCheck(figures, mold, press);
    check.orientation();
    check.clamp(resin);
    check.size();
    check.opening(standMm);
    List<String> softened = new ArrayList<>(check.objections());
    check.shot(resin, proven);
    return proven || allowed ? byRecord(press, proven, softened, check) : byChecks(press, check);
  }

  /** The record has decided; what the checks object to is worth a note. */
  private static PressFit byRecord(
      PressRow press, boolean proven, List<String> softened, FitCheck check) {
    List<String> hard = new ArrayList<>(check.objections());
    hard.removeAll(softened);
    List<String> notes = new ArrayList<>(check.notes());
    softened.forEach(objection -> notes.add("estimate: " + objection + "; the record decides"));
    return new PressFit(
        press,
        proven ? Standing.PROVEN : Standing.ALLOWED,
        String.join(", ", hard),
        notes,
        Set.of());
  }

  private static PressFit byChecks(PressRow press, FitCheck check) {
    return new PressFit(
        press,
        check.checked() ? Standing.CHECKED : Standing.UNCHECKED,
        String.join(", ", check.objections()),
        check.notes(),
        check.gaps());
  }

  private static Optional<String> barrelObjection(Optional<ResinRow> resin, PressRow press) {
    Barrel has = press.build().barrel();
    Barrel needs = resin.map(ResinRow::barrel).orElse(has);
    boolean suits = has == needs || needs == Barrel.STANDARD && has == Barrel.WEAR_RESISTANT;
    return suits
        ? Optional.empty()
        : Optional.of(words(has) + " barrel, " + words(needs) + " needed");
  }

  private static String words(Barrel barrel) {
    return barrel.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
