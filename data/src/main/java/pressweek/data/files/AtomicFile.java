package pressweek.data.files;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file so that a reader finds the old content or the new one, never a part. */
public final class AtomicFile {
  /** What writes the text. */
  public interface Text {
    void writeTo(Writer out) throws IOException;
  }

  /** What fills a new file. */
  private interface Content {
    void writeTo(FileChannel channel) throws IOException;
  }

  private AtomicFile() {}

  /**
   * Writes to a new file beside the one wanted, then moves it there. Folders on the way are made.
   */
  public static void write(Path file, Text text) throws IOException {
    fill(file, channel -> write(text, channel));
  }

  /** The same for bytes. */
  public static void write(Path file, byte[] bytes) throws IOException {
    fill(file, channel -> write(bytes, channel));
  }

  private static void fill(Path file, Content content) throws IOException {
    Path whole = file.toAbsolutePath();
    Path folder = whole.getParent();
    if (folder == null) {
      throw new IOException(file + " is not a file that can be written");
    }
    Files.createDirectories(folder);
    Path fresh = folder.resolve("." + whole.getFileName() + "." + UUID.randomUUID());
    try {
      fillNew(fresh, content);
      move(fresh, whole);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private static void fillNew(Path fresh, Content content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      content.writeTo(channel);
      channel.force(true);
    }
  }

  private static void write(Text text, FileChannel channel) throws IOException {
    Writer out =
        new BufferedWriter(
            new OutputStreamWriter(Channels.newOutputStream(channel), StandardCharsets.UTF_8));
    text.writeTo(out);
    out.flush();
  }

  private static void write(byte[] bytes, FileChannel channel) throws IOException {
    ByteBuffer left = ByteBuffer.wrap(bytes);
    while (left.hasRemaining()) {
      channel.write(left);
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
