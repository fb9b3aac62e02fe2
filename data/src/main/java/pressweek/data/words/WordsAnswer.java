package pressweek.data.words;

import java.util.List;

/**
 * What a customer's words can mean.
 *
 * @param words the words as they were given
 * @param readings readings, the best first; never none
 */
public record WordsAnswer(String words, List<Reading> readings) {
  public WordsAnswer {
    readings = List.copyOf(readings);
  }
}
