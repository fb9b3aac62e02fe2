package pressweek.app.store;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Tick;

/**
 * A program of its own that changes a store without end, and says on its standard output what has
 * been changed, one line a change. It is there to be killed.
 */
final class KilledWriter {
  static final int TICKS = 3;

  private KilledWriter() {}

  /** The first argument names the store. */
  public static void main(String[] arguments) throws StoreTrouble, IOException {
    try (Store store = Store.open(arguments[0]);
        FileOutputStream out = new FileOutputStream(FileDescriptor.out)) {
      long version = store.deskStates().version();
      say(out, "open", version);
      while (store.deskStates().put(Given.state("step " + (version + 1)), version)
          instanceof Answer.Done) {
        version++;
        say(out, "week", version);
        store.ticks().add(ticks(version));
        say(out, "ticks", version);
      }
    }
  }

  /** Three pulls of a step. */
  static List<Tick> ticks(long step) {
    return IntStream.range(0, TICKS)
        .mapToObj(i -> Given.tick((int) step * TICKS + i, "P" + step + "/" + i, (int) step))
        .toList();
  }

  /** In one piece, so that a line is whole or not there. */
  private static void say(FileOutputStream out, String what, long step) throws IOException {
    out.write((what + " " + step + "\n").getBytes(StandardCharsets.US_ASCII));
  }
}
