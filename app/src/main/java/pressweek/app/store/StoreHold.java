package pressweek.app.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * That one program serves the pages of an SQLite store. The operating system lets go of it when
 * that program ends, however it ends; what a file beside the store says of it is only for words.
 */
public final class StoreHold implements AutoCloseable {
  /** What the name of the store's file is followed by. */
  static final String BESIDE = ".open";

  /**
   * A byte that the file never has: where a lock keeps others from reading, they can still read.
   */
  private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

  private static final int LONGEST = 500;

  /**
   * Files that this very program holds: the system would let a program lock a file twice, and lose
   * both locks when one of them is closed.
   */
  private static final Set<Path> OURS = ConcurrentHashMap.newKeySet();

  private final Path file;
  private final FileChannel channel;

  private StoreHold(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Holds the store at a path, which need not be there yet.
   *
   * @param words what to tell whoever comes second, in a line
   * @throws StoreTrouble when another program holds it, with what that one said
   */
  public static StoreHold of(Path store, String words) throws StoreTrouble {
    Path whole = store.toAbsolutePath().normalize();
    Path file = whole.resolveSibling(whole.getFileName() + BESIDE);
    try {
      Files.createDirectories(file.resolveSibling(""));
      if (!OURS.add(file)) {
        throw held(whole, "this very program");
      }
      return locked(whole, file, words);
    } catch (IOException e) {
      throw new Troubles(file.toString()).of(e);
    }
  }

  private static StoreHold locked(Path store, Path file, String words)
      throws IOException, StoreTrouble {
    boolean done = false;
    FileChannel channel = opened(file);
    try {
      FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
      if (lock == null) {
        throw held(store, said(channel));
      }
      StoreHold hold = new StoreHold(file, channel);
      hold.say(words);
      done = true;
      return hold;
    } finally {
      if (!done) {
        OURS.remove(file);
        channel.close();
      }
    }
  }

  private static FileChannel opened(Path file) throws IOException {
    try {
      return FileChannel.open(
          file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    } catch (IOException e) {
      OURS.remove(file);
      throw e;
    }
  }

  private static String said(FileChannel channel) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(LONGEST);
    channel.read(bytes, 0);
    String words = new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8).strip();
    return words.isEmpty() ? "another program" : words;
  }

  private static StoreTrouble held(Path store, String who) {
    return new StoreTrouble(
        StoreTrouble.Kind.LOCKED,
        store + " is open already, by " + who,
        "Look at its pages, or end it first; another store is named by --store");
  }

  /** Tells whoever comes second something else from now on. */
  public void say(String words) throws StoreTrouble {
    try {
      channel.truncate(0);
      channel.write(ByteBuffer.wrap((words + "\n").getBytes(StandardCharsets.UTF_8)), 0);
    } catch (IOException e) {
      throw new Troubles(file.toString()).of(e);
    }
  }

  /** The file stays, since whoever has opened it by now would hold one that nobody finds. */
  @Override
  public void close() throws StoreTrouble {
    try {
      channel.truncate(0);
      channel.close();
    } catch (IOException e) {
      throw new Troubles(file.toString()).of(e);
    } finally {
      OURS.remove(file);
    }
  }
}
