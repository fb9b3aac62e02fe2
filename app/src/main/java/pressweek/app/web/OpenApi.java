package pressweek.app.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The routes as a description by the OpenAPI Specification 3.1. */
final class OpenApi {
  private static final Pattern PARAMETER = Pattern.compile("[{<]([a-z]+)[}>]");

  private OpenApi() {}

  static ObjectNode of(List<Route> routes) {
    ObjectNode api = Asked.object().put("openapi", "3.1.0");
    api.putObject("info")
        .put("title", "Pressweek")
        .put("version", "1")
        .put(
            "description",
            "Times are minutes since 1970 UTC, money thousandths of a cent. A change wants the header "
                + Access.TOKEN
                + " with the token of /api/me, and the version of the week that it starts from.");
    ObjectNode schemes = api.putObject("components").putObject("securitySchemes");
    schemes
        .putObject("session")
        .put("type", "apiKey")
        .put("in", "cookie")
        .put("name", Access.COOKIE);
    schemes.putObject("word").put("type", "apiKey").put("in", "header").put("name", Access.TOKEN);
    ObjectNode paths = api.putObject("paths");
    for (Route route : routes) {
      String path = PARAMETER.matcher(route.path()).replaceAll("{$1}");
      ObjectNode at = paths.has(path) ? (ObjectNode) paths.get(path) : paths.putObject(path);
      operation(at.putObject(route.method().name().toLowerCase(Locale.ROOT)), route);
    }
    return api;
  }

  private static void operation(ObjectNode json, Route route) {
    boolean change = route.method().name().equals("POST");
    json.put("summary", route.does());
    json.put("x-right", route.right().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    ArrayNode parameters = json.putArray("parameters");
    Matcher names = PARAMETER.matcher(route.path());
    while (names.find()) {
      ObjectNode parameter = parameters.addObject().put("name", names.group(1));
      parameter.put("in", "path").put("required", true);
      parameter.putObject("schema").put("type", "string");
    }
    route.fields().stream()
        .filter(f -> f.place() == Field.Place.QUERY)
        .forEach(f -> query(parameters.addObject(), f));
    List<Field> body = route.fields().stream().filter(f -> f.place() == Field.Place.BODY).toList();
    if (!body.isEmpty()) {
      body(json.putObject("requestBody"), body);
    }
    ObjectNode security = json.putArray("security").addObject();
    if (route.right() != Right.OPEN) {
      security.putArray("session");
      if (change) {
        security.putArray("word");
      }
    }
    ObjectNode answers = json.putObject("responses");
    answers.putObject("200").put("description", "done");
    if (route.right() != Right.OPEN) {
      answers.putObject("401").put("description", "nobody is logged in");
      answers
          .putObject("403")
          .put("description", "not for this role, or not from one of the pages");
    }
    answers.putObject("default").put("description", "an object whose words say what is wrong");
  }

  private static void query(ObjectNode json, Field field) {
    json.put("name", field.name()).put("in", "query").put("required", field.needed());
    json.put("description", field.words()).putObject("schema").put("type", field.type());
  }

  private static void body(ObjectNode json, List<Field> fields) {
    json.put("required", fields.stream().anyMatch(Field::needed));
    ObjectNode schema = json.putObject("content").putObject("application/json").putObject("schema");
    schema.put("type", "object");
    ObjectNode properties = schema.putObject("properties");
    ArrayNode required = schema.putArray("required");
    for (Field field : fields) {
      ObjectNode property = properties.putObject(field.name());
      boolean texts = field.type().equals(Field.TEXTS);
      property.put("type", texts ? "array" : field.type()).put("description", field.words());
      if (texts || field.type().equals("array")) {
        property.putObject("items").put("type", texts ? "string" : "object");
      }
      if (field.needed()) {
        required.add(field.name());
      }
    }
  }
}
