package pressweek.data.problem;

import java.util.ArrayList;
import java.util.List;

/**
 * A job for tests, which say only what differs: 100 pieces in black PP, due on the third day at
 * 15:00, free to start with the plan, of ordinary weight, not food-grade. Its id is {@code
 * order/1}. It needs at least one call of {@link #on}.
 */
public final class JobBuilder {
  private final String order;
  private int pieces = 100;
  private int earliestMin = SmallPlant.START;
  private int dueMin = SmallPlant.START + 2 * SmallPlant.DAY + 15 * 60;
  private int afterMin;
  private int weightHundredths = 100;
  private String resin = "PP";
  private String colour = "BLK";
  private boolean foodGrade;
  private int startupShots;
  private int startupGrams;
  private int startupMin;
  private int operatorThousandths;
  private List<Take> takes = List.of();
  private final List<Option> options = new ArrayList<>();

  private JobBuilder(String order) {
    this.order = order;
  }

  /** The job of line 1 of an order. */
  public static JobBuilder job(String order) {
    return new JobBuilder(order);
  }

  /** Pieces to make. */
  public JobBuilder pieces(int good) {
    pieces = good;
    return this;
  }

  /** Not before this minute. */
  public JobBuilder earliest(int min) {
    earliestMin = min;
    return this;
  }

  /** Due at this minute. */
  public JobBuilder due(int min) {
    dueMin = min;
    return this;
  }

  /** Minutes from the end of the run to being ready. */
  public JobBuilder after(int min) {
    afterMin = min;
    return this;
  }

  /** How much its lateness counts; 100 is ordinary. */
  public JobBuilder weight(int hundredths) {
    weightHundredths = hundredths;
    return this;
  }

  /** Resin and colour. */
  public JobBuilder in(String resinId, String colourId) {
    resin = resinId;
    colour = colourId;
    return this;
  }

  /** Food-grade. */
  public JobBuilder food() {
    foodGrade = true;
    return this;
  }

  /** Start-up shots, grams and minutes after a change; say it before {@link #on}. */
  public JobBuilder startup(int shots, int grams, int min) {
    startupShots = shots;
    startupGrams = grams;
    startupMin = min;
    return this;
  }

  /** Thousandths of an operator; say it before {@link #on}. */
  public JobBuilder operators(int thousandths) {
    operatorThousandths = thousandths;
    return this;
  }

  /** Inserts taken from stock; say it before {@link #on}. */
  public JobBuilder takes(Take... all) {
    takes = List.of(all);
    return this;
  }

  /** Adds an option: a mold on a press, with the working minutes of the run. */
  public JobBuilder on(String press, String mold, int runMin) {
    return on(press, mold, "", runMin);
  }

  /** Adds an option with a tooling set. */
  public JobBuilder on(String press, String mold, String tooling, int runMin) {
    int shots = (pieces + 3) / 4;
    Making making = new Making(shots, 4, startupShots, startupGrams, takes);
    int cycleMillis = Math.max(1, runMin * 60_000 / shots);
    Pace pace = new Pace(cycleMillis, runMin, startupMin, operatorThousandths, "test");
    options.add(new Option(press, mold, tooling, making, pace, Standing.PROVEN, List.of()));
    return this;
  }

  /** The job. */
  public Job build() {
    OrderLine line = new OrderLine(order, "1", "", "ITEM", pieces, dueMin, List.of(), "");
    return new Job(
        line,
        new Item("ITEM", List.of()),
        new Quantity(pieces, 0, 0, pieces),
        new Deadline(earliestMin, dueMin, afterMin, weightHundredths),
        resin,
        colour,
        foodGrade,
        options);
  }
}
