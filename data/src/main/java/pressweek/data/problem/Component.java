package pressweek.data.problem;

import java.util.Locale;

/** What a thing is that a run takes from stock. */
public enum Component {
  INSERT,
  TIP,
  CARTON,
  LABEL,
  /** Counted in grams. */
  MASTERBATCH,
  /** Natural resin, counted in grams. */
  RESIN;

  /** What it is called. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** True when it is weighed and counted in grams, false when it is counted in pieces. */
  public boolean weighed() {
    return this == MASTERBATCH || this == RESIN;
  }

  /** The unit in which it is counted: {@code pcs} or {@code g}. */
  public String unit() {
    return weighed() ? "g" : "pcs";
  }
}
