package pressweek.app.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;
import pressweek.app.store.Store;
import pressweek.app.store.StoreHold;
import pressweek.app.store.StoreTrouble;

/** Where the pages keep what they know. */
final class StoreOption {
  @Option(
      names = "--store",
      paramLabel = "FILE-OR-URL",
      defaultValue = "",
      description =
          "where it is kept: a file, or jdbc:postgresql://... (default: FOLDER.pressweek beside the folder)")
  private String store = "";

  /** The store of a plant's folder. */
  Store open(Path folder) throws StoreTrouble {
    return Store.open(place(folder));
  }

  /**
   * Holds the store of a plant's folder for one program alone; nothing for a database on a server,
   * which several may serve.
   */
  List<StoreHold> hold(Path folder, String words) throws StoreTrouble {
    String place = place(folder);
    try {
      return place.startsWith("jdbc:") ? List.of() : List.of(StoreHold.of(Path.of(place), words));
    } catch (InvalidPathException e) {
      // Opening the store says what is wrong with the name.
      return List.of();
    }
  }

  /** The same where one must be there already. */
  Store existing(Path folder) throws StoreTrouble {
    return Store.existing(place(folder));
  }

  /** A file or an address. */
  String place(Path folder) {
    if (!store.isEmpty()) {
      return store;
    }
    Path whole = folder.toAbsolutePath().normalize();
    return whole.resolveSibling(whole.getFileName() + ".pressweek").toString();
  }
}
