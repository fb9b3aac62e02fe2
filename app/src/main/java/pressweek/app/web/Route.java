package pressweek.app.web;

import io.javalin.http.HandlerType;
import java.util.List;

/**
 * A route of the server.
 *
 * @param method GET or POST
 * @param path with parameters in braces
 * @param right what it asks of whoever calls it
 * @param does what it does, in a sentence
 * @param work does it
 * @param fields what a request brings along, for the description
 */
record Route(
    HandlerType method, String path, Right right, String does, Work work, List<Field> fields) {
  Route {
    fields = List.copyOf(fields);
  }

  static Route get(String path, Right right, String does, Work work) {
    return new Route(HandlerType.GET, path, right, does, work, List.of());
  }

  static Route post(String path, Right right, String does, Work work) {
    return new Route(HandlerType.POST, path, right, does, work, List.of());
  }

  /** The same route, which is described with what a request brings along. */
  Route asks(Field... brought) {
    return new Route(method, path, right, does, work, List.of(brought));
  }
}
