package pressweek.reports.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.problem.Setup;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;

/**
 * A change or a dismount as a row of the change list.
 *
 * @param press press
 * @param span from its start to its end
 * @param minutes working minutes
 * @param shift the setters' shift in which it starts; empty when none is under way
 * @param kinds what is exchanged, in words; {@code dismount} for a mold that is taken off for
 *     another press
 * @param setups how the press is set up before and after
 * @param purgeG resin purged, grams
 * @param run run that it is for; empty for a dismount
 */
public record ChangeRow(
    String press,
    Span span,
    int minutes,
    Optional<ShiftSpan> shift,
    List<String> kinds,
    Setups setups,
    int purgeG,
    String run) {
  public ChangeRow {
    kinds = List.copyOf(kinds);
  }

  /** Before and after. */
  public record Setups(Setup from, Setup to) {}

  /** The mold that is taken off; empty when the mold stays or none was on. */
  public String moldOut() {
    return sameMold() ? "" : setups.from().mold();
  }

  /** The mold that is put on; empty when the mold stays or none is put on. */
  public String moldIn() {
    return sameMold() ? "" : setups.to().mold();
  }

  private boolean sameMold() {
    return setups.from().mold().equals(setups.to().mold());
  }

  /** The tooling set that is taken out; empty when it stays or none was in. */
  public String toolingOut() {
    return sameTooling() ? "" : setups.from().tooling();
  }

  /** The tooling set that is put in; empty when it stays or none is put in. */
  public String toolingIn() {
    return sameTooling() ? "" : setups.to().tooling();
  }

  private boolean sameTooling() {
    return setups.from().tooling().equals(setups.to().tooling());
  }

  /** Resin and colour before, {@code PP, SGR}; empty when they stay. */
  public String materialOut() {
    return sameMaterial() ? "" : material(setups.from());
  }

  /** Resin and colour after; empty when they stay. */
  public String materialIn() {
    return sameMaterial() ? "" : material(setups.to());
  }

  private boolean sameMaterial() {
    return material(setups.from()).equals(material(setups.to()));
  }

  private static String material(Setup setup) {
    return setup.resin() + (setup.colour().isEmpty() ? "" : ", " + setup.colour());
  }

  /** What stays on the press, in words: {@code mold M12}, {@code resin PP}. */
  public List<String> stays() {
    List<String> stays = new ArrayList<>();
    add(stays, "mold", setups.from().mold(), setups.to().mold());
    add(stays, "tooling", setups.from().tooling(), setups.to().tooling());
    add(stays, "resin", setups.from().resin(), setups.to().resin());
    add(stays, "colour", setups.from().colour(), setups.to().colour());
    return List.copyOf(stays);
  }

  private static void add(List<String> stays, String what, String before, String after) {
    if (!before.isEmpty() && before.equals(after)) {
      stays.add(what + " " + before);
    }
  }
}
