package pressweek.data.guide;

import java.util.List;

/**
 * How a code is to be drawn.
 *
 * @param pins symbols that must stand in it
 * @param bare true to leave out all optional parts without a pin
 * @param shuffled true to write parts of any order in any order
 */
public record Wish(List<Pin> pins, boolean bare, boolean shuffled) {
  /** Any code. */
  public static final Wish ANY = new Wish(List.of(), false, false);

  public Wish {
    pins = List.copyOf(pins);
  }
}
