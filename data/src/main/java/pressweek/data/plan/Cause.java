package pressweek.data.plan;

/** Why a run could not begin earlier on its press. */
public enum Cause {
  PRESS("press busy"),
  SHIFT("press not working"),
  MOLD("mold elsewhere"),
  MOLD_AWAY("mold away"),
  SETTER("no setter free"),
  INSPECTOR("no inspector free"),
  OPERATOR("no operator free"),
  TOOLING("tooling set or device in use"),
  SERVICE("mold in service"),
  DRYER("dryer in use, or not dry yet"),
  LINKED("waits for the run that it builds on"),
  CHOICE("held back on purpose"),
  INSERTS("not in the house"),
  EARLIEST("not before its earliest start"),
  PROMISED("held for a promised run"),
  NEIGHBOUR("its resin must not follow what is in the barrel"),
  HORIZON("no time left within the horizon");

  private final String words;

  Cause(String words) {
    this.words = words;
  }

  /** The cause as a person reads it. */
  public String words() {
    return words;
  }
}
