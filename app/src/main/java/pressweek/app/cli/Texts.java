package pressweek.app.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Texts that a command is given: its arguments, or for {@code -} the lines of standard input. */
final class Texts {
  static final String STANDARD_INPUT = "-";

  private Texts() {}

  /** The texts; blank lines of standard input are left out. */
  static List<String> of(List<String> arguments, InputStream in) throws IOException {
    List<String> texts = new ArrayList<>();
    for (String argument : arguments) {
      if (argument.equals(STANDARD_INPUT)) {
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        reader.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(texts::add);
      } else {
        texts.add(argument);
      }
    }
    return texts;
  }
}
