package pressweek.reports.write;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import pressweek.data.words.Assumed;
import pressweek.data.words.Reading;
import pressweek.data.words.Understood;
import pressweek.data.words.WordsAnswer;

/** The readings of a customer's words, as one line of JSON. */
public final class WordsJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private WordsJson() {}

  /** The answer as a JSON object on one line; places are counted from 1. */
  public static String line(WordsAnswer answer) {
    ObjectNode object = JSON.createObjectNode();
    object.put("words", answer.words());
    ArrayNode readings = object.putArray("readings");
    answer.readings().forEach(reading -> reading(readings.addObject(), reading));
    return object.toString();
  }

  private static void reading(ObjectNode node, Reading reading) {
    node.put("code", reading.code());
    node.put("family", reading.family());
    node.put("complete", reading.complete());
    ArrayNode understood = node.putArray("understood");
    for (Understood piece : reading.understood()) {
      ObjectNode one = understood.addObject();
      one.put("position", piece.start() + 1).put("text", piece.text());
      means(one, piece.means());
    }
    ArrayNode assumed = node.putArray("assumed");
    for (Assumed one : reading.assumed()) {
      ObjectNode object = assumed.addObject().put("because", one.because());
      means(object, one.means());
    }
    texts(node.putArray("not_understood"), reading.notUnderstood());
    texts(node.putArray("conflicts"), reading.conflicts());
    texts(node.putArray("questions"), reading.questions());
    node.put("doubt", reading.doubt());
  }

  private static void means(ObjectNode node, Map<String, String> means) {
    ObjectNode object = node.putObject("means");
    means.forEach(object::put);
  }

  private static void texts(ArrayNode list, List<String> texts) {
    texts.forEach(list::add);
  }
}
