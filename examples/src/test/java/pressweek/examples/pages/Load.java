package pressweek.examples.pages;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Many people on the pages at once. A reader asks for what a page shows about once a second, which
 * is more than a person does; an editor looks at the week and promises a line or lets it go, about
 * every two seconds.
 */
final class Load {
  private static final List<String> READ =
      List.of(
          "/api/week",
          "/api/pulls",
          "/api/lists/changes",
          "/api/lists/crew",
          "/api/figures",
          "/",
          "/assets/wall.js");
  private static final int READER_MS = 1_000;
  private static final int EDITOR_MS = 2_000;

  private final URI home;
  private final long end;
  private final Queue<Double> reads = new ConcurrentLinkedQueue<>();
  private final Queue<String> faults = new ConcurrentLinkedQueue<>();
  private final AtomicInteger done = new AtomicInteger();
  private final AtomicInteger stale = new AtomicInteger();
  private final AtomicInteger refused = new AtomicInteger();

  /**
   * What came of it.
   *
   * @param reads how long each read took, milliseconds, the shortest first
   * @param done changes that were acknowledged
   * @param stale changes refused because somebody else was first
   * @param refused changes refused because they would break a rule
   * @param faults what went wrong
   */
  record Came(List<Double> reads, int done, int stale, int refused, List<String> faults) {
    /** The time in milliseconds within which so many of a hundred reads were answered. */
    double percentile(int percent) {
      return reads.get(Math.min(reads.size() - 1, reads.size() * percent / 100));
    }
  }

  private Load(URI home, Duration lasting) {
    this.home = home;
    end = System.nanoTime() + lasting.toNanos();
  }

  /** Lets so many people work for so long, and waits for them. */
  static Came of(URI home, int readers, int editors, Duration lasting)
      throws IOException, InterruptedException {
    Load load = new Load(home, lasting);
    List<String> lines = lines(new Loopback(home));
    List<Thread> people = new ArrayList<>();
    for (int i = 0; i < readers; i++) {
      SplittableRandom random = new SplittableRandom(i);
      people.add(new Thread(() -> load.read(random), "reader " + i));
    }
    for (int i = 0; i < editors; i++) {
      SplittableRandom random = new SplittableRandom(1_000L + i);
      people.add(new Thread(() -> load.edit(lines, random), "editor " + i));
    }
    people.forEach(Thread::start);
    for (Thread person : people) {
      person.join();
    }
    return new Came(
        load.reads.stream().sorted().toList(),
        load.done.get(),
        load.stale.get(),
        load.refused.get(),
        List.copyOf(load.faults));
  }

  /** Lines that may be promised or let go. */
  private static List<String> lines(Loopback someone) throws IOException {
    List<String> lines = new ArrayList<>();
    for (JsonNode run : someone.get("/api/week").path("runs")) {
      if (!run.path("running").asBoolean()) {
        lines.add(run.path("line").asText());
      }
    }
    return lines;
  }

  private boolean isOver() {
    return System.nanoTime() >= end;
  }

  private void read(SplittableRandom random) {
    try {
      Loopback me = new Loopback(home);
      while (pause(READER_MS, random)) {
        String path = READ.get(random.nextInt(READ.size()));
        long begun = System.nanoTime();
        me.body(path);
        reads.add((System.nanoTime() - begun) / 1e6);
      }
    } catch (IOException | InterruptedException e) {
      faults.add(Thread.currentThread().getName() + ": " + e);
    }
  }

  private void edit(List<String> lines, SplittableRandom random) {
    try {
      Loopback me = new Loopback(home);
      while (pause(EDITOR_MS, random)) {
        JsonNode week = me.get("/api/week");
        String line = lines.get(random.nextInt(lines.size()));
        boolean promised = false;
        for (JsonNode run : week.path("runs")) {
          promised |= run.path("line").asText().equals(line) && run.path("promised").asBoolean();
        }
        ObjectNode edit = JsonNodeFactory.instance.objectNode();
        edit.put("version", week.path("version").asLong()).put("line", line);
        edit.put("kind", promised ? "let-go" : "promise");
        switch (me.change("/api/week/edits", edit)) {
          case DONE -> done.incrementAndGet();
          case STALE -> stale.incrementAndGet();
          case REFUSED -> refused.incrementAndGet();
        }
      }
    } catch (IOException | InterruptedException e) {
      faults.add(Thread.currentThread().getName() + ": " + e);
    }
  }

  /** Thinks for half to one and a half times so long; false when time is over. */
  private boolean pause(int mean, SplittableRandom random) throws InterruptedException {
    Thread.sleep(mean / 2 + random.nextInt(mean));
    return !isOver();
  }
}
