package pressweek.data.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The smallest folder that can be planned, on disk; tests say only what differs. */
final class PlantFolder {
  static final String ORDERS = "order,line,item,quantity,due\n4711,1,KNOB,100,2026-12-01\n";
  static final String PRESSES = "press,orientation,clamp_kn\nP1,vertical,500\n";
  static final String MOLDS = "mold,makes,live_cavities,runs_on,cycle_s\nM1,KNOB,2,P1,40\n";

  private final Path path;

  PlantFolder(Path path) {
    this.path = path;
    with("orders.csv", ORDERS).with("presses.csv", PRESSES).with("molds.csv", MOLDS);
  }

  PlantFolder with(String file, String text) {
    return with(file, text, StandardCharsets.UTF_8);
  }

  PlantFolder with(String file, String text, Charset charset) {
    return with(file, text.getBytes(charset));
  }

  PlantFolder with(String file, byte[] bytes) {
    try {
      Files.write(path.resolve(file), bytes);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  PlantFolder without(String file) {
    try {
      Files.delete(path.resolve(file));
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Path path() {
    return path;
  }

  Folder read() {
    try {
      return FolderReader.read(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every finding as a person reads it. */
  List<String> findings() {
    return read().findings().stream().map(InputError::toString).toList();
  }
}
