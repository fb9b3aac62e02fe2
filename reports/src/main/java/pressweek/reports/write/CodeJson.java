package pressweek.reports.write;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import pressweek.data.guide.CodeFault;
import pressweek.data.guide.CodeReading;
import pressweek.data.problem.Attribute;
import pressweek.data.week.Explained;

/** What an item code means, as one line of JSON. */
public final class CodeJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private CodeJson() {}

  /** The code as a JSON object on one line; places are counted from 1. */
  public static String line(Explained code) {
    ObjectNode object = JSON.createObjectNode();
    object.put("code", code.code());
    object.put("canonical", code.canonical());
    object.put("family", code.family());
    object.put("good", code.good());
    ArrayNode pieces = object.putArray("parts");
    code.reading().pieces().forEach(piece -> piece(pieces.addObject(), piece));
    ArrayNode attributes = object.putArray("attributes");
    code.attributes().forEach(attribute -> attribute(attributes.addObject(), attribute));
    ArrayNode molds = object.putArray("molds");
    for (Explained.Maker maker : code.makers()) {
      ObjectNode mold = molds.addObject().put("mold", maker.mold());
      texts(mold.putArray("presses"), maker.presses());
    }
    code.reading().fault().ifPresent(fault -> fault(object.putObject("fault"), fault));
    if (!code.good()) {
      object.put("trouble", code.trouble());
      object.put("cure", code.cure());
    }
    return object.toString();
  }

  private static void piece(ObjectNode node, CodeReading.Piece piece) {
    node.put("position", piece.start() + 1);
    node.put("text", piece.text());
    node.put("part", piece.part());
    node.put("words", piece.words());
    ObjectNode says = node.putObject("says");
    piece.says().forEach(says::put);
  }

  private static void attribute(ObjectNode node, Attribute attribute) {
    node.put("name", attribute.name());
    node.put("value", attribute.value());
    node.put("origin", attribute.origin().name().toLowerCase(Locale.ROOT));
    node.put("because", attribute.because());
  }

  private static void fault(ObjectNode node, CodeFault fault) {
    node.put("position", fault.start() + 1);
    node.put("length", fault.length());
    node.put("seen", fault.seen());
    node.put("expected", fault.expected());
    texts(node.putArray("nearest"), fault.nearest());
    node.put("message", fault.sentence());
  }

  private static void texts(ArrayNode list, List<String> texts) {
    texts.forEach(list::add);
  }
}
