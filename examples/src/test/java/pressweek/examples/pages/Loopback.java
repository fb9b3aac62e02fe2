package pressweek.examples.pages;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Map;

/** Somebody who asks the pages of a server on this machine. */
final class Loopback {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int FINE = 200;
  private static final Map<Integer, Came> CAME =
      Map.of(FINE, Came.DONE, 409, Came.STALE, 422, Came.REFUSED);

  private final HttpClient http =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final URI home;
  private final String token;

  /** What came of a change that was asked for. */
  enum Came {
    DONE,
    /** Somebody else was first, and that was said. */
    STALE,
    /** It would break a rule, and that was said. */
    REFUSED
  }

  Loopback(URI home) throws IOException {
    this.home = home;
    token = get("/api/me").path("token").asText();
  }

  /** The JSON at an address. */
  JsonNode get(String path) throws IOException {
    return JSON.readTree(body(path));
  }

  /** What is at an address; anything but 200 is an error. */
  String body(String path) throws IOException {
    HttpResponse<String> answer = send(HttpRequest.newBuilder(home.resolve(path)));
    if (answer.statusCode() != FINE) {
      throw new IOException(path + " was answered with " + answer.statusCode());
    }
    return answer.body();
  }

  /** Asks for something that changes nothing, by POST. */
  JsonNode post(String path, JsonNode body) throws IOException {
    HttpResponse<String> answer = posted(path, body);
    if (answer.statusCode() != FINE) {
      throw new IOException(path + " was answered with " + answer.statusCode() + answer.body());
    }
    return JSON.readTree(answer.body());
  }

  /** Asks for a change; that it is refused in words is no error. */
  Came change(String path, JsonNode body) throws IOException {
    HttpResponse<String> answer = posted(path, body);
    Came came = CAME.get(answer.statusCode());
    if (came == null) {
      throw new IOException(path + " was answered with " + answer.statusCode() + answer.body());
    }
    return came;
  }

  private HttpResponse<String> posted(String path, JsonNode body) throws IOException {
    return send(
        HttpRequest.newBuilder(home.resolve(path))
            .header("X-Pressweek-Token", token)
            .POST(HttpRequest.BodyPublishers.ofString(body.toString())));
  }

  private HttpResponse<String> send(HttpRequest.Builder request) throws IOException {
    try {
      return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
  }
}
