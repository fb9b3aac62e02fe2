package pressweek.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Arguments that cannot be taken, so that all of them are said in one go. */
final class BadArguments {
  private final List<String> messages = new ArrayList<>();

  /** What is wrong with one. */
  void add(String message) {
    messages.add(message);
  }

  /**
   * An argument.
   *
   * @param otherwise what stands for it where it cannot be read; never used, since {@link #check}
   *     throws then
   * @param read reads it
   */
  <T> T or(T otherwise, Supplier<T> read) {
    try {
      return read.get();
    } catch (ParameterException e) {
      add(String.valueOf(e.getMessage()));
      return otherwise;
    }
  }

  /** Ends the command where one was bad. */
  void check(CommandLine line) {
    if (!messages.isEmpty()) {
      throw new ParameterException(line, String.join(System.lineSeparator(), messages));
    }
  }
}
