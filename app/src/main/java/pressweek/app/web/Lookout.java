package pressweek.app.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import pressweek.app.desk.Background;
import pressweek.app.desk.Desk;
import pressweek.app.desk.DeskEvent;
import pressweek.app.desk.Standing;
import pressweek.app.store.StoreTrouble;

/**
 * Looks every few seconds whether something changed that no page of this server did: a file of the
 * folder, or the week, by another server on the same store. The pages are told.
 */
final class Lookout implements AutoCloseable {
  private static final System.Logger LOG = System.getLogger(Lookout.class.getName());
  private static final int SECONDS = 5;

  private final Desk desk;
  private final Consumer<DeskEvent> listener = this::heard;
  private final AtomicReference<Optional<Seen>> seen = new AtomicReference<>(Optional.empty());
  private final ScheduledExecutorService turns =
      Executors.newSingleThreadScheduledExecutor(Background.named("lookout"));

  /** What there was to see at a time. */
  private record Seen(long version, boolean givenOut, List<String> files) {}

  Lookout(Desk desk) {
    this.desk = desk;
    desk.listen(listener);
  }

  /** Begins to look. */
  void start() {
    turns.scheduleWithFixedDelay(this::look, 0, SECONDS, TimeUnit.SECONDS);
  }

  /** Looks once; at the first look there is nothing to tell. */
  void look() {
    try {
      Optional<Standing> now = desk.standing();
      if (now.isPresent()) {
        Seen there = seen(now.get());
        Optional<Seen> before = seen.getAndSet(Optional.of(there));
        before.ifPresent(b -> tell(b, there, now.get()));
      }
    } catch (StoreTrouble | IOException | UncheckedIOException e) {
      LOG.log(System.Logger.Level.DEBUG, "looked in vain; the next request will say why", e);
    }
  }

  private Seen seen(Standing now) throws IOException {
    return new Seen(now.version(), now.givenOut(), desk.filesChanged(now));
  }

  private void tell(Seen before, Seen there, Standing now) {
    if (!before.files().equals(there.files())) {
      desk.tell(new DeskEvent.FilesChanged(there.files()));
    }
    if (before.version() != there.version()) {
      desk.tell(new DeskEvent.Changed(now.version(), now.state().made().by(), now.state().what()));
    } else if (before.givenOut() != there.givenOut()) {
      String number = now.week().plan().head().number();
      desk.tell(new DeskEvent.Changed(now.version(), "", "gave out plan " + number));
    }
  }

  /** What this server did is known to its pages. */
  private void heard(DeskEvent event) {
    if (event instanceof DeskEvent.Changed) {
      try {
        Optional<Standing> now = desk.standing();
        if (now.isPresent()) {
          seen.set(Optional.of(seen(now.get())));
        }
      } catch (StoreTrouble | IOException e) {
        LOG.log(System.Logger.Level.DEBUG, "looked in vain; the next look will tell", e);
      }
    }
  }

  @Override
  public void close() {
    desk.unlisten(listener);
    turns.shutdownNow();
  }
}
