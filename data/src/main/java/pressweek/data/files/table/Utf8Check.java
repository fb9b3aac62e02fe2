package pressweek.data.files.table;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/** Tells, chunk by chunk, whether bytes are UTF-8 text, and in which line they first are not. */
final class Utf8Check {
  private final CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
  private final CharBuffer chars = CharBuffer.allocate(1 << 12);
  private ByteBuffer rest = ByteBuffer.allocate(0);
  private int line = 1;
  private int oddLine;
  private boolean controls;

  /** Takes the next bytes. */
  void feed(ByteBuffer bytes) {
    for (int i = bytes.position(); i < bytes.limit(); i++) {
      controls |= control(bytes.get(i));
    }
    if (oddLine == 0) {
      decode(join(bytes), false);
    }
  }

  /** Says that there are no more. */
  void end() {
    if (oddLine == 0) {
      decode(rest, true);
    }
  }

  /** The first line with bytes that are not UTF-8; 0 for none. */
  int oddLine() {
    return oddLine;
  }

  /** True when there are control characters that no text holds. */
  boolean controls() {
    return controls;
  }

  private static boolean control(byte b) {
    return b >= 0 && b < 0x20 && b != '\t' && b != '\n' && b != '\r' && b != '\f' && b != 0x1A;
  }

  private ByteBuffer join(ByteBuffer bytes) {
    ByteBuffer all = ByteBuffer.allocate(rest.remaining() + bytes.remaining());
    return all.put(rest).put(bytes).flip();
  }

  private void decode(ByteBuffer bytes, boolean last) {
    CoderResult result = CoderResult.OVERFLOW;
    while (result.isOverflow()) {
      result = decoder.decode(bytes, chars, last);
      chars.flip();
      while (chars.hasRemaining()) {
        line += chars.get() == '\n' ? 1 : 0;
      }
      chars.clear();
    }
    if (result.isError()) {
      oddLine = line;
    }
    rest = bytes;
  }
}
