package pressweek.data.plan;

/**
 * What a plan must keep (hard) and what it is charged for (cost); the sentence is what a scheduler
 * reads.
 */
public enum Rule {
  ELIGIBLE(true, "the mold may run on the press and makes the item"),
  PRESS_ONCE(true, "a press does one thing at a time"),
  PRESS_HOURS(true, "runs and changes take place while the press works"),
  MOLD_ONCE(true, "a mold is in one place at a time and is taken off before it goes elsewhere"),
  MOLD_AWAY(true, "a mold that is away is not used"),
  CHANGE_TIME(true, "a change has the minutes that the change table or a record asks for"),
  RUN_TIME(true, "a run has the minutes that its shots ask for"),
  INSERTS(true, "what a run takes from stock is in the house when it starts"),
  LOTS(true, "pulls use usable lots, first expired, then first in, and add up"),
  SETTERS(true, "no more changes at once than setters"),
  INSPECTORS(true, "no more first-article checks at once than inspectors"),
  COUNTED(true, "no more of a tooling set or device at once than there are"),
  SERVICE(true, "a mold is serviced before it has made more shots than it may"),
  LINKED(true, "a run that builds on another starts after it and its rest"),
  DRYER(true, "what must be dried comes out of a dryer that has dried it"),
  OPERATORS(true, "no more hand loading than operators"),
  FOOD(true, "food-grade runs only on presses kept or cleared for them"),
  NEIGHBOURS(true, "resins that must not meet are not neighbours in a barrel"),
  EARLIEST(true, "nothing starts before it may"),
  RUNNING(true, "what is running stays"),
  PROMISED(true, "what is promised to the floor stays"),
  COMPLETE(true, "every order line is in the plan once or is unplaced with a reason"),
  FIGURES(true, "the figures of the plan add up"),
  LATE(false, "lateness, by shipping cut-off missed and by day"),
  UNPLACED(false, "lines that find no place within the horizon"),
  CHANGE(false, "minutes of change and dismount"),
  PURGE(false, "resin purged"),
  START_UP(false, "resin lost in start-up shots"),
  PRESS_RATE(false, "what a press costs above the cheapest one that could do it"),
  KEPT_PRESS(false, "other work on a press kept for food-grade work"),
  OVERTIME(false, "overtime shifts that are opened"),
  SHORT_CAMPAIGN(false, "campaigns shorter than the plant wants them"),
  CLOSE(false, "time until the last run ends"),
  MOVED(false, "runs that move against an earlier plan");

  private final boolean hard;
  private final String sentence;

  Rule(boolean hard, String sentence) {
    this.hard = hard;
    this.sentence = sentence;
  }

  /** True for what a plan must keep, false for what it is charged for. */
  public boolean hard() {
    return hard;
  }

  /** The rule as a scheduler reads it. */
  public String sentence() {
    return sentence;
  }
}
