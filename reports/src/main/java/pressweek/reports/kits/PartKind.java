package pressweek.reports.kits;

import pressweek.data.problem.Component;

/** What a part of a kit is. */
public enum PartKind {
  INSERT("insert"),
  TIP("tip"),
  GAUGE("gauge"),
  RESIN("resin"),
  MASTERBATCH("masterbatch"),
  /** Cartons, labels and whatever else goes with the parts. */
  PACKAGING("packaging and labels");

  private final String words;

  PartKind(String words) {
    this.words = words;
  }

  /** What a person calls it. */
  public String words() {
    return words;
  }

  /** True for what is weighed and counted in grams. */
  public boolean weighed() {
    return this == RESIN || this == MASTERBATCH;
  }

  /** What a component is in a kit. */
  public static PartKind of(Component component) {
    return switch (component) {
      case INSERT -> INSERT;
      case TIP -> TIP;
      case RESIN -> RESIN;
      case MASTERBATCH -> MASTERBATCH;
      case CARTON, LABEL -> PACKAGING;
    };
  }
}
