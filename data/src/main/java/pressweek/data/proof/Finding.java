package pressweek.data.proof;

import java.util.Locale;

/**
 * Something that a proof found.
 *
 * @param severity how bad it is
 * @param file file name
 * @param line line in it, from 1
 * @param message what is wrong, with an example where there is one
 */
public record Finding(Severity severity, String file, int line, String message) {
  /** How bad a finding is. */
  public enum Severity {
    /** A code means nothing, or not one thing. */
    ERROR,
    /** Something of the guide does nothing, or leads nowhere. */
    WARNING,
    /** Worth knowing; nothing is wrong. */
    NOTE;

    /** The word in a message. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** The finding as a person reads it: {@code file:line: severity: message}. */
  @Override
  public String toString() {
    return file + ":" + line + ": " + severity.word() + ": " + message;
  }
}
