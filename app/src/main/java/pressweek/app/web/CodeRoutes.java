package pressweek.app.web;

import static pressweek.app.web.Route.get;

import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import pressweek.app.desk.Desk;
import pressweek.data.files.Folder;
import pressweek.data.guide.Guide;
import pressweek.data.week.Explainer;
import pressweek.data.words.WordReader;
import pressweek.reports.guide.CodeSheet;
import pressweek.reports.guide.Practice;
import pressweek.reports.guide.PracticePage;
import pressweek.reports.write.CodeJson;
import pressweek.reports.write.WordsJson;

/** Item codes and customers' words. */
final class CodeRoutes {
  private static final int QUESTIONS = 20;

  private final Desk desk;

  CodeRoutes(Desk desk) {
    this.desk = desk;
  }

  List<Route> routes() {
    return List.of(
        get("/api/decode", Right.CODES, "what an item code means", this::decode)
            .asks(Field.text("code", "an item code").inQuery()),
        get("/api/words", Right.CODES, "which codes a customer's words can mean", this::words)
            .asks(Field.text("text", "a customer's words").inQuery()),
        get("/api/codes/sheet", Right.CODES, "the guide as a page to print", this::sheet),
        get("/api/codes/practice", Right.CODES, "practice questions as a page", this::practice)
            .asks(Field.whole("seed", "which questions are drawn").inQuery()));
  }

  private Folder folder() throws IOException {
    return desk.folder().look().folder();
  }

  private static Guide guide(Explainer explainer) {
    return explainer
        .guide()
        .orElseThrow(() -> new NotFoundResponse("the folder has no guide.json that can be used"));
  }

  private void decode(Asked asked) throws IOException {
    Explainer explainer = new Explainer(folder());
    guide(explainer);
    json(asked, CodeJson.line(explainer.explain(asked.query("code"))));
  }

  private void words(Asked asked) throws IOException {
    Guide guide = guide(new Explainer(folder()));
    json(asked, WordsJson.line(new WordReader(guide).read(asked.query("text"))));
  }

  private static void json(Asked asked, String text) {
    asked.context().contentType("application/json").result(text);
  }

  private void sheet(Asked asked) throws IOException {
    Folder folder = folder();
    String page = CodeSheet.html(guide(new Explainer(folder)), folder.plant().name());
    Documents.send(asked, "code-sheet.html", page.getBytes(StandardCharsets.UTF_8));
  }

  private void practice(Asked asked) throws IOException {
    long seed = asked.queryNumber("seed", 0, Integer.MAX_VALUE);
    Practice practice = Practice.of(guide(new Explainer(folder())), seed, QUESTIONS);
    String page = PracticePage.html(practice);
    Documents.send(asked, "practice.html", page.getBytes(StandardCharsets.UTF_8));
  }
}
