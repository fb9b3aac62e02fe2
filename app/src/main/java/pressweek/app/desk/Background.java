package pressweek.app.desk;

import java.util.concurrent.ThreadFactory;

/** Threads beside the work, which do not keep the program from ending. */
public final class Background {
  private Background() {}

  /** Makes such threads, all by one name. */
  public static ThreadFactory named(String name) {
    return work -> {
      Thread made = new Thread(work, name);
      made.setDaemon(true);
      return made;
    };
  }
}
