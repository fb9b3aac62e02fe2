package pressweek.app.cli;

import java.lang.management.ManagementFactory;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Duration;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import pressweek.app.sweep.Worker;

/** How a program works on sweeps. */
final class WorkOptions {
  private static final int MOST_THREADS = 256;
  private static final int MOST_SECONDS = 3_600;

  @Option(
      names = "--threads",
      paramLabel = "N",
      defaultValue = "1",
      description = "plans made side by side (default: ${DEFAULT-VALUE})")
  private int threads;

  @Option(
      names = "--heartbeat",
      paramLabel = "SECONDS",
      defaultValue = "2",
      description =
          "how often it says that it is alive; after four that are missing its task is given to another (default: ${DEFAULT-VALUE})")
  private int heartbeat;

  /** The settings; {@code least} is the smallest number of threads. */
  Worker.Settings settings(CommandSpec spec, int least) {
    if (threads < least || threads > MOST_THREADS) {
      throw new ParameterException(
          spec.commandLine(),
          "--threads is " + threads + "; expected " + least + " to " + MOST_THREADS);
    }
    if (heartbeat < 1 || heartbeat > MOST_SECONDS) {
      throw new ParameterException(
          spec.commandLine(), "--heartbeat is " + heartbeat + "; expected 1 to " + MOST_SECONDS);
    }
    return new Worker.Settings(name(), threads, Duration.ofSeconds(heartbeat));
  }

  /** The machine and the process, which no two workers share. */
  private static String name() {
    String process = ManagementFactory.getRuntimeMXBean().getName();
    try {
      return process.replaceFirst("@.*", "") + "@" + InetAddress.getLocalHost().getHostName();
    } catch (UnknownHostException e) {
      return process;
    }
  }
}
