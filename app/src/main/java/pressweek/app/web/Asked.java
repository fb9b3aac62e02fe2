package pressweek.app.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.app.store.row.Change;

/** A request: what it asks, who asks, and the answer to it. */
final class Asked {
  static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private static final String WHO = "who";
  private static final int MOST_LETTERS = 10_000;

  private final Context context;
  private final Instant at;
  private JsonNode body = MissingNode.getInstance();

  Asked(Context context, Instant at) {
    this.context = context;
    this.at = at;
  }

  /** The request itself. */
  Context context() {
    return context;
  }

  static void know(Context context, Who who) {
    context.attribute(WHO, who);
  }

  /** Who asks. */
  Who who() {
    Who who = context.attribute(WHO);
    if (who == null) {
      throw new IllegalStateException("nobody was asked who he is");
    }
    return who;
  }

  /** A change that the caller makes now, with the reason that the body gives. */
  Change change() {
    return new Change(who().name(), at, optional("why").orElse(""));
  }

  /** When it was asked. */
  Instant at() {
    return at;
  }

  private JsonNode body() {
    if (body.isMissingNode()) {
      body = parsed();
    }
    return body;
  }

  private JsonNode parsed() {
    try {
      JsonNode tree = JSON.readTree(context.body());
      if (tree != null && tree.isObject()) {
        return tree;
      }
    } catch (JsonProcessingException e) {
      throw new BadRequestResponse("the body is not JSON; expected an object");
    }
    throw new BadRequestResponse("the body is not a JSON object; expected one");
  }

  /** The node of the body under a name; missing when it is not there. */
  JsonNode node(String name) {
    return body().path(name);
  }

  /** A text of the body. */
  String text(String name) {
    return optional(name)
        .orElseThrow(() -> new BadRequestResponse("\"" + name + "\" is missing; expected a text"));
  }

  /** A text of the body that may be as long as a small file. */
  String longText(String name, int most) {
    return optional(name, most)
        .orElseThrow(() -> new BadRequestResponse("\"" + name + "\" is missing; expected a text"));
  }

  /** Texts of the body. */
  List<String> texts(String name, int most) {
    JsonNode node = body().path(name);
    List<String> texts = new ArrayList<>();
    for (JsonNode one : node) {
      if (one.isTextual() && one.textValue().length() <= MOST_LETTERS) {
        texts.add(one.textValue());
      }
    }
    if (!node.isArray() || texts.size() != node.size() || texts.isEmpty() || texts.size() > most) {
      throw new BadRequestResponse(
          "\"%s\" is %s; expected a list of 1 to %d texts"
              .formatted(
                  name,
                  node.isMissingNode()
                      ? "missing"
                      : node.isArray() ? "a list of " + node.size() : "another thing",
                  most));
    }
    return List.copyOf(texts);
  }

  /** A text of the body; empty when it is not there, or the request has no body. */
  Optional<String> optional(String name) {
    return optional(name, MOST_LETTERS);
  }

  private Optional<String> optional(String name, int most) {
    if (context.body().isEmpty()) {
      return Optional.empty();
    }
    JsonNode node = body().path(name);
    if (node.isMissingNode() || node.isNull()) {
      return Optional.empty();
    }
    if (!node.isTextual() || node.textValue().length() > most) {
      throw new BadRequestResponse(
          "\"" + name + "\" is not a text; expected one of at most " + most + " letters");
    }
    return Optional.of(node.textValue());
  }

  /** A whole number of the body. */
  int number(String name, int least, int most) {
    JsonNode node = body().path(name);
    if (!node.isIntegralNumber()
        || !node.canConvertToInt()
        || node.intValue() < least
        || node.intValue() > most) {
      throw new BadRequestResponse(
          "\"%s\" is %s; expected a whole number from %d to %d"
              .formatted(name, node.isMissingNode() ? "missing" : "another thing", least, most));
    }
    return node.intValue();
  }

  /** The version of the week that the caller saw. */
  long version() {
    JsonNode node = body().path("version");
    if (!node.isIntegralNumber() || !node.canConvertToLong()) {
      throw new BadRequestResponse(
          "\"version\" is missing; expected the version of the week that you saw");
    }
    return node.longValue();
  }

  /** A text of the query. */
  String query(String name) {
    return optionalQuery(name)
        .orElseThrow(() -> new BadRequestResponse("?" + name + "= is missing; expected a text"));
  }

  /** A text of the query; empty when it is not there. */
  Optional<String> optionalQuery(String name) {
    Optional<String> text = Optional.ofNullable(context.queryParam(name));
    if (text.filter(t -> t.length() > MOST_LETTERS).isPresent()) {
      throw new BadRequestResponse(
          "?" + name + "= is too long; expected at most " + MOST_LETTERS + " letters");
    }
    return text.filter(t -> !t.isEmpty());
  }

  /** A whole number of the query. */
  long queryNumber(String name, long least, long most) {
    try {
      long number = Long.parseLong(query(name));
      if (number >= least && number <= most) {
        return number;
      }
      throw new BadRequestResponse(wanted(name, least, most));
    } catch (NumberFormatException e) {
      throw new BadRequestResponse(wanted(name, least, most));
    }
  }

  private static String wanted(String name, long least, long most) {
    return "?%s= is another thing; expected a whole number from %d to %d"
        .formatted(name, least, most);
  }

  /** An object to answer with. */
  static ObjectNode object() {
    return JSON.createObjectNode();
  }

  /** Answers with JSON. */
  void answer(JsonNode node) {
    context.contentType("application/json").result(node.toString());
  }

  /** Answers that it cannot be done, in words for a person. */
  void refuse(int status, String words) {
    context.status(status);
    answer(object().put("words", words));
  }
}
