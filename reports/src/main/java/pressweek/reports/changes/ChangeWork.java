package pressweek.reports.changes;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A change or a dismount with all that a setter needs for it.
 *
 * @param change what is exchanged, where and when
 * @param out the mold that is taken off
 * @param in the mold that is put on
 * @param temperature which way the barrel goes, in words; empty when the resin stays
 * @param firstArticle who checks the first article; empty when nothing is exchanged
 * @param atOnce what is changed elsewhere at the same time
 * @param tasks what there is to do
 * @param notComputed what was not worked out, each with the column that would give it
 */
public record ChangeWork(
    ChangeRow change,
    MoldMove out,
    MoldMove in,
    String temperature,
    String firstArticle,
    AtOnce atOnce,
    Tasks tasks,
    List<String> notComputed) {
  public ChangeWork {
    notComputed = List.copyOf(notComputed);
  }

  /**
   * A mold that is moved.
   *
   * @param weightKg its weight; empty when not known
   * @param places where it comes from or goes to, in words; empty when not known
   */
  public record MoldMove(OptionalDouble weightKg, List<String> places) {
    static final MoldMove NONE = new MoldMove(OptionalDouble.empty(), List.of());

    public MoldMove {
      places = List.copyOf(places);
    }

    /** The mold with its weight, in words: {@code M-LV90, 107 kg}; only its number without. */
    public String words(String mold) {
      return weightKg.isEmpty() ? mold : mold + ", " + kilograms() + " kg";
    }

    private String kilograms() {
      String text = Double.toString(weightKg.getAsDouble());
      return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
  }

  /**
   * Changes at the same time.
   *
   * @param most most changes under way at one time while this one is, itself counted
   * @param presses the other presses that are changed while this one is
   */
  public record AtOnce(int most, List<String> presses) {
    public AtOnce {
      presses = List.copyOf(presses);
    }
  }

  /**
   * Tasks in order.
   *
   * @param before what can be done while the press still runs
   * @param stopped what stops it
   */
  public record Tasks(List<String> before, List<String> stopped) {
    public Tasks {
      before = List.copyOf(before);
      stopped = List.copyOf(stopped);
    }
  }
}
