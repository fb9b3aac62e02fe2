package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.desk.Desk;
import pressweek.app.desk.FolderLook;
import pressweek.app.desk.Standing;
import pressweek.app.store.Store;
import pressweek.app.store.StoreHold;
import pressweek.app.store.StoreTrouble;
import pressweek.data.files.InputError;
import pressweek.data.plan.Settings;

/** {@code pressweek open}: the pages for those who would rather look than type. */
@Command(
    name = "open",
    description = {
      "Opens the pages of a plant's folder in a browser: the week wall, pulls, changes, crew, codes, figures and files. Only this machine can reach them, and nobody logs in, unless --listen is given.",
      "What is planned, ticked off and changed is kept in a store: a file beside the folder, or a PostgreSQL database that several machines share.",
      "Ctrl-C ends it; nothing that was answered is lost."
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:it was ended by hand",
      "2:the folder or the store cannot be used, another program has the store open, or the port is taken"
    })
final class OpenCommand implements Callable<Integer> {
  private static final int LAST_PORT = 65_535;

  private final PageServer pages;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the plant's folder")
  private Path folder;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "8086",
      description = "port to listen on; 0 for any that is free (default: ${DEFAULT-VALUE})")
  private int port;

  @Mixin private StoreOption store;
  @Mixin private NetworkOptions network;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "5",
      description = "how long to plan a week that has no plan yet (default: ${DEFAULT-VALUE})")
  private int seconds;

  @Option(
      names = "--now",
      paramLabel = "TIME",
      defaultValue = "",
      description =
          "moment to begin at instead of the present, as 2026-12-01T09:30Z, to try things out")
  private String now = "";

  OpenCommand(PageServer pages) {
    this.pages = pages;
  }

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    if (!Files.isDirectory(folder)) {
      throw new ParameterException(
          spec.commandLine(), folder + " is not a folder; expected the folder of a plant");
    }
    if (port < 0 || port > LAST_PORT) {
      throw new ParameterException(
          spec.commandLine(), "--port is " + port + "; expected 0 to " + LAST_PORT);
    }
    if (seconds < 1) {
      throw new ParameterException(
          spec.commandLine(), "--seconds is " + seconds + "; expected at least 1");
    }
    network.check(spec);
    try {
      return held();
    } catch (StoreTrouble e) {
      err.println(e.getMessage());
    } catch (IOException e) {
      err.println(
          e.getMessage() + ": cannot be read or written (" + e.getClass().getSimpleName() + ")");
    }
    return ExitCode.BAD_INPUT;
  }

  /** Two programs with one store in one file would not hear of each other's changes at once. */
  private int held() throws StoreTrouble, IOException {
    List<StoreHold> holds = store.hold(folder, process());
    try (Store kept = store.open(folder)) {
      return open(kept, clock(), holds);
    } finally {
      for (StoreHold hold : holds) {
        hold.close();
      }
    }
  }

  private static String process() {
    return "process %d, since %s"
        .formatted(ProcessHandle.current().pid(), Instant.now().truncatedTo(ChronoUnit.SECONDS));
  }

  private Clock clock() {
    if (now.isEmpty()) {
      return Clock.systemUTC();
    }
    Instant from = Instant.ofEpochSecond(Moments.minute(spec.commandLine(), now) * 60L);
    return Clock.offset(Clock.systemUTC(), Duration.between(Instant.now(), from));
  }

  private int open(Store kept, Clock clock, List<StoreHold> holds)
      throws IOException, StoreTrouble {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    int nowMin = Moments.nextHour(spec.commandLine(), now);
    Desk desk = new Desk(kept, new FolderLook(folder, nowMin), clock);
    if (network.isOn() && kept.users().all().isEmpty()) {
      err.println("nobody may log in yet; add somebody: pressweek person FOLDER NAME scheduler");
      return ExitCode.BAD_INPUT;
    }
    if (desk.standing().isEmpty() && desk.folder().look().week().problem().isPresent()) {
      out.println("Planning the week for " + Counts.of(seconds, "second") + " ...");
      out.flush();
    }
    desk.begin(
        new Settings(seconds, 0, 1), System.getProperty("user.name", "somebody"), progress -> {});
    if (desk.standing().isEmpty()) {
      desk.folder().look().week().errors().stream().map(InputError::toString).forEach(err::println);
      err.println("no plan yet: the files have errors; the page Files shows them");
    }
    otherPlant(desk).ifPresent(err::println);
    return serve(desk, holds);
  }

  /** A store that was made for another folder shows that plant's week. */
  private Optional<String> otherPlant(Desk desk) throws StoreTrouble, IOException {
    String here = desk.folder().look().folder().plant().name();
    return desk.standing()
        .map(s -> s.week().plan().problem().plant().name())
        .filter(there -> !there.equals(here))
        .map(
            there ->
                "note: the store holds the week of plant \"%s\", the folder is of \"%s\"; a store of its own is given by --store"
                    .formatted(there, here));
  }

  private int serve(Desk desk, List<StoreHold> holds) throws StoreTrouble {
    PrintWriter out = spec.commandLine().getOut();
    PageServer.Running running;
    try {
      running = pages.serve(desk, network.place(spec, port));
    } catch (IllegalStateException e) {
      spec.commandLine().getErr().println(e.getMessage());
      return ExitCode.BAD_INPUT;
    }
    for (StoreHold hold : holds) {
      hold.say(process() + ", with its pages at " + running.address());
    }
    CountDownLatch ended = new CountDownLatch(1);
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> {
                  running.close().run();
                  ended.countDown();
                }));
    String number =
        desk.standing().map(Standing::week).map(w -> w.plan().head().number()).orElse("none");
    out.println("Plan " + number + " at " + running.address() + "   (Ctrl-C ends)");
    out.flush();
    try {
      ended.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return ExitCode.DONE;
  }
}
