package pressweek.examples;

import java.util.ArrayList;
import java.util.List;

/**
 * The resins and colours of every drawn plant. Melt temperatures, drying and cavity pressures lie
 * in the ranges of published tables (plastic-industry.com, Ji-Horng); prices, colours and the PVC
 * figures are of our own invention.
 */
final class ResinSheet {
  /**
   * Resin, how often of a hundred, fit for food work, then density, melt temperature, cavity
   * pressure, drying, price, neighbours.
   */
  private static final List<List<String>> RESINS =
      List.of(
          List.of("PP", "32", "yes", "0.905", "230", "3.0", "", "", "1.60", ""),
          List.of("ABS", "25", "no", "1.04", "240", "3.4", "3", "88", "2.30", ""),
          List.of("PA66", "18", "yes", "1.14", "285", "4.4", "4", "80", "3.40", ""),
          List.of("POM", "12", "yes", "1.41", "205", "3.9", "2", "80", "2.70", "PVC-P"),
          List.of("PBT", "8", "no", "1.31", "245", "3.7", "3", "110", "3.10", ""),
          List.of("PVC-P", "5", "no", "1.25", "175", "2.5", "", "", "1.70", "POM"));

  private static final List<List<String>> NAMES =
      List.of(
          List.of("NAT", "natural", "EFE9DC"),
          List.of("WHT", "white", "F7F7F2"),
          List.of("YEL", "yellow", "F2C500"),
          List.of("ORA", "orange", "E8701A"),
          List.of("RED", "red", "C2191F"),
          List.of("GRN", "green", "1E7A3C"),
          List.of("SKY", "sky blue", "4E93C8"),
          List.of("NVY", "navy blue", "1B2A4E"),
          List.of("LGY", "light grey", "C4C7C9"),
          List.of("SLT", "slate grey", "55606A"),
          List.of("BRN", "brown", "5C3D2A"),
          List.of("BLK", "black", "121214"));

  /** Colour symbols. */
  static final List<String> COLOURS = NAMES.stream().map(c -> c.get(0)).toList();

  /** The colour without masterbatch. */
  static final String NATURAL = "NAT";

  /** Masterbatch of every other colour, percent of the total mass. */
  static final int LET_DOWN_PCT = 3;

  /** Colours with a food declaration. */
  static final List<String> FOOD_COLOURS = List.of("NAT", "WHT", "SKY", "NVY", "BLK");

  private ResinSheet() {}

  /** Resins with a food declaration. */
  static List<String> foodResins() {
    return RESINS.stream().map(r -> r.get(0)).filter(ResinSheet::food).toList();
  }

  /** True when the resin has a food declaration. */
  static boolean food(String resin) {
    return RESINS.stream().anyMatch(r -> r.get(0).equals(resin) && r.get(2).equals("yes"));
  }

  /** One or two resins for a head, common ones more often. */
  static List<String> some(Draw draw) {
    List<Integer> weights = RESINS.stream().map(r -> Integer.valueOf(r.get(1))).toList();
    List<String> some = new ArrayList<>();
    some.add(RESINS.get(draw.weighted(weights)).get(0));
    String other = RESINS.get(draw.weighted(weights)).get(0);
    if (!some.contains(other)) {
      some.add(other);
    }
    return List.copyOf(some);
  }

  static String resinCsv() {
    Sheet sheet =
        new Sheet(
            "resin",
            "density",
            "melt_c",
            "cavity_kn_cm2",
            "dry_h",
            "dry_c",
            "price_per_kg",
            "never_next_to");
    for (List<String> r : RESINS) {
      sheet.row(r.get(0), r.get(3), r.get(4), r.get(5), r.get(6), r.get(7), r.get(8), r.get(9));
    }
    return sheet.text();
  }

  /** What gives a colour. */
  static String masterbatch(String colour) {
    return "MB-" + colour;
  }

  static String colourCsv() {
    Sheet sheet = new Sheet("colour", "name", "srgb", "masterbatch", "let_down_pct");
    for (List<String> c : NAMES) {
      boolean natural = c.get(0).equals(NATURAL);
      sheet.row(
          c.get(0),
          c.get(1),
          c.get(2),
          natural ? "" : masterbatch(c.get(0)),
          natural ? 0 : LET_DOWN_PCT);
    }
    return sheet.text();
  }
}
