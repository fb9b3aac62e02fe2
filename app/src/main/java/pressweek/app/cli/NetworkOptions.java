package pressweek.app.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** How the pages are reached from the plant's network: only by HTTPS, and one logs in. */
final class NetworkOptions {
  /** The variable of the environment that holds the password of the certificate. */
  static final String PASSWORD = "PRESSWEEK_CERTIFICATE_PASSWORD";

  @Option(
      names = "--listen",
      paramLabel = "ADDRESS",
      defaultValue = "",
      description =
          "address of this machine on the plant's network, 0.0.0.0 for all; wants --name and either --certificate or --behind-proxy, and people who may log in (pressweek person)")
  private String listen = "";

  @Option(
      names = "--name",
      paramLabel = "NAME",
      description = "name by which browsers call the pages; may be given several times")
  private List<String> names = List.of();

  @Option(
      names = "--certificate",
      paramLabel = "FILE.p12",
      defaultValue = "",
      description =
          "the plant's own certificate with its key, PKCS #12; its password is in the variable "
              + PASSWORD)
  private String certificate = "";

  @Option(
      names = "--behind-proxy",
      description =
          "a proxy does the HTTPS and passes the requests on to this machine, with their Host header")
  private boolean proxy;

  boolean isOn() {
    return !listen.isEmpty();
  }

  /** Refuses what does not fit together. */
  void check(CommandSpec spec) {
    String wrong = wrong();
    if (!wrong.isEmpty()) {
      throw new ParameterException(spec.commandLine(), wrong);
    }
  }

  private String wrong() {
    if (!isOn()) {
      boolean more = proxy || !certificate.isEmpty() || !names.isEmpty();
      return more ? "--name, --certificate and --behind-proxy go with --listen" : "";
    }
    if (names.isEmpty()) {
      return "--listen wants --name; expected the name by which browsers call the pages";
    }
    if (proxy != certificate.isEmpty()) {
      return "--listen wants either --certificate or --behind-proxy; passwords do not go over a network unprotected";
    }
    if (!proxy && !Files.isRegularFile(Path.of(certificate))) {
      return "--certificate " + certificate + " is not a file; expected a PKCS #12 file";
    }
    return "";
  }

  PageServer.Place place(CommandSpec spec, int port) {
    check(spec);
    String password = Optional.ofNullable(System.getenv(PASSWORD)).orElse("");
    Optional<PageServer.Certificate> own =
        certificate.isEmpty()
            ? Optional.empty()
            : Optional.of(new PageServer.Certificate(Path.of(certificate), password));
    return new PageServer.Place(listen, port, names, own);
  }
}
