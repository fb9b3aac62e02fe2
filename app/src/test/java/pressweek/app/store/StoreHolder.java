package pressweek.app.store;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A program of its own that holds a store until it is killed, and says so on standard output. */
final class StoreHolder {
  private StoreHolder() {}

  /** The first argument names the store. */
  public static void main(String[] arguments) throws StoreTrouble, IOException {
    try (StoreHold hold =
            StoreHold.of(Path.of(arguments[0]), "process " + ProcessHandle.current().pid());
        FileOutputStream out = new FileOutputStream(FileDescriptor.out)) {
      out.write("held\n".getBytes(StandardCharsets.US_ASCII));
      // Until it is killed: nobody writes to it.
      while (System.in.read() >= 0) {
        hold.say("somebody wrote");
      }
    }
  }
}
