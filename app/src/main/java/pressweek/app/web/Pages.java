package pressweek.app.web;

import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The pages themselves and what they are made of, from the program's own files. */
final class Pages {
  private static final Map<String, String> KINDS =
      Map.of(
          "html", "text/html; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "svg", "image/svg+xml",
          "webmanifest", "application/manifest+json");

  /** Files of libraries, by the names under which the pages ask for them. */
  private static final Map<String, String> LIBRARY =
      Map.of("preact.js", "/pressweek/app/web/library/standalone.module.js");

  private Pages() {}

  static List<Route> routes() {
    return List.of(
        page("/", "wall"),
        page("/pulls", "pulls"),
        page("/changes", "changes"),
        page("/crew", "crew"),
        page("/codes", "codes"),
        page("/figures", "figures"),
        page("/scenarios", "scenarios"),
        page("/files", "files"),
        page("/history", "history"),
        page("/users", "users"),
        page("/login", "login"),
        Route.get(
            "/pulls-worker.js",
            Right.OPEN,
            "keeps the pull page without a network",
            a -> {
              a.context().header("Service-Worker-Allowed", "/");
              send(a, "pulls-worker.js");
            }),
        Route.get("/favicon.ico", Right.OPEN, "the icon of the pages", a -> send(a, "icon.svg")),
        Route.get("/assets/{file}", Right.OPEN, "a file that pages are made of", Pages::asset));
  }

  /** A page holds nothing of the plant; what it shows, it asks for itself. */
  private static Route page(String path, String name) {
    return Route.get(path, Right.OPEN, "the page " + name, a -> send(a, name + ".html"));
  }

  private static void asset(Asked asked) throws IOException {
    send(asked, asked.context().pathParam("file"));
  }

  private static void send(Asked asked, String name) throws IOException {
    String kind = KINDS.get(name.substring(name.lastIndexOf('.') + 1));
    if (kind == null || !name.matches("[a-z0-9-]+\\.[a-z]+")) {
      throw new NotFoundResponse("there is no such file");
    }
    String path = LIBRARY.getOrDefault(name, "/pressweek/app/web/pages/" + name);
    try (InputStream file = Pages.class.getResourceAsStream(path)) {
      byte[] bytes =
          Optional.ofNullable(file)
              .orElseThrow(() -> new NotFoundResponse("there is no such file"))
              .readAllBytes();
      asked.context().contentType(kind).header("Cache-Control", "no-cache").result(bytes);
    }
  }
}
