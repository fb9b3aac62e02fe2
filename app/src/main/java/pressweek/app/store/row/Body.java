package pressweek.app.store.row;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** Bytes that the store keeps as they are, without looking into them. */
public final class Body {
  private final byte[] bytes;

  private Body(byte[] bytes) {
    this.bytes = bytes;
  }

  /** A body with a copy of the bytes. */
  public static Body of(byte[] bytes) {
    return new Body(bytes.clone());
  }

  /** A body with the text in UTF-8. */
  public static Body of(String text) {
    return new Body(text.getBytes(StandardCharsets.UTF_8));
  }

  /** A copy of the bytes. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** The SHA-256 of the bytes in 64 small hexadecimal digits (FIPS 180-4). */
  public String sha256() {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Body body && Arrays.equals(bytes, body.bytes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bytes);
  }

  @Override
  public String toString() {
    return bytes.length + " bytes";
  }
}
