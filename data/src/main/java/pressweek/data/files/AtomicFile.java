package pressweek.data.files;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a text file so that a reader finds the old text or the new one, never a part. */
public final class AtomicFile {
  /** What writes the text. */
  public interface Text {
    void writeTo(Writer out) throws IOException;
  }

  private AtomicFile() {}

  /**
   * Writes to a new file beside the one wanted, then moves it there. Folders on the way are made.
   */
  public static void write(Path file, Text text) throws IOException {
    Path whole = file.toAbsolutePath();
    Path folder = whole.getParent();
    if (folder == null) {
      throw new IOException(file + " is not a file that can be written");
    }
    Files.createDirectories(folder);
    Path fresh = folder.resolve("." + whole.getFileName() + "." + UUID.randomUUID());
    try {
      write(text, fresh);
      move(fresh, whole);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private static void write(Text text, Path fresh) throws IOException {
    try (FileChannel channel =
            FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        Writer out =
            new BufferedWriter(
                new OutputStreamWriter(
                    Channels.newOutputStream(channel), StandardCharsets.UTF_8))) {
      text.writeTo(out);
      out.flush();
      channel.force(true);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
