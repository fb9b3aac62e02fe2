package pressweek.app.web;

import io.javalin.http.HandlerType;

/**
 * A route of the server.
 *
 * @param method GET or POST
 * @param path with parameters in braces
 * @param right what it asks of whoever calls it
 * @param does what it does, in a sentence
 * @param work does it
 */
record Route(HandlerType method, String path, Right right, String does, Work work) {
  static Route get(String path, Right right, String does, Work work) {
    return new Route(HandlerType.GET, path, right, does, work);
  }

  static Route post(String path, Right right, String does, Work work) {
    return new Route(HandlerType.POST, path, right, does, work);
  }
}
