package pressweek.app.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.sse.SseClient;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import pressweek.app.desk.Background;
import pressweek.app.desk.DeskEvent;
import pressweek.solver.Progress;

/** Tells the pages that are open what happens, by server-sent events (WHATWG HTML, section 9.2). */
final class Live implements AutoCloseable {
  static final String PATH = "/api/live";

  private static final int BEAT_SECONDS = 10;

  private final Queue<SseClient> clients = new ConcurrentLinkedQueue<>();
  private final ScheduledExecutorService beat =
      Executors.newSingleThreadScheduledExecutor(Background.named("live"));

  Live() {
    beat.scheduleAtFixedRate(
        () -> send("beat", Asked.object()), BEAT_SECONDS, BEAT_SECONDS, TimeUnit.SECONDS);
  }

  /** A page that listens from now on. */
  void join(SseClient client) {
    client.keepAlive();
    client.onClose(() -> clients.remove(client));
    clients.add(client);
    client.sendEvent("beat", "{}");
  }

  void tell(DeskEvent event) {
    if (event instanceof DeskEvent.Changed c) {
      send(
          "week",
          Asked.object().put("version", c.version()).put("by", c.by()).put("what", c.what()));
    } else if (event instanceof DeskEvent.Searched s) {
      Progress p = s.progress();
      send(
          "progress",
          Asked.object()
              .put("millis", p.elapsedMillis())
              .put("cost", p.figures().avoidableCost())
              .put("late", p.figures().lateLines())
              .put("unplaced", p.figures().unplacedLines()));
    } else if (event instanceof DeskEvent.Proposed p) {
      send("proposal", Asked.object().put("words", p.words()));
    } else if (event instanceof DeskEvent.FilesChanged f) {
      ObjectNode data = Asked.object();
      f.words().forEach(data.putArray("words")::add);
      send("files", data);
    } else if (event instanceof DeskEvent.Compared c) {
      ObjectNode data = Asked.object().put("done", c.done()).put("of", c.of());
      send("compared", data.put("line", c.line()));
    } else if (event instanceof DeskEvent.Ticked t) {
      send("ticks", Asked.object().put("by", t.by()));
    }
  }

  private void send(String event, ObjectNode data) {
    beat.execute(() -> clients.forEach(client -> client.sendEvent(event, data.toString())));
  }

  @Override
  public void close() {
    beat.shutdownNow();
    clients.forEach(SseClient::close);
  }
}
