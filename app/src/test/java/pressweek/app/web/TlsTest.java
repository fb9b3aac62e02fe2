package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.List;
import java.util.Set;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.StoreTrouble;

/** HTTPS with a certificate that the JDK's own keytool made. */
class TlsTest {
  private static final String PASSWORD = "only for tests";

  @TempDir private Path folder;

  private Path certificate() throws IOException, InterruptedException {
    Path file = folder.resolve("plant.p12");
    Process keytool =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                    "-genkeypair",
                    "-keyalg",
                    "EC",
                    "-alias",
                    "plant",
                    "-dname",
                    "CN=localhost",
                    "-ext",
                    "san=dns:localhost",
                    "-validity",
                    "30",
                    "-storetype",
                    "PKCS12",
                    "-keystore",
                    file.toString(),
                    "-storepass",
                    PASSWORD))
            .redirectErrorStream(true)
            .start();
    String said = new String(keytool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(keytool.waitFor()).as(said).isZero();
    return file;
  }

  private static HttpClient trusting(Path file) throws GeneralSecurityException, IOException {
    KeyStore keys = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(file)) {
      keys.load(in, PASSWORD.toCharArray());
    }
    TrustManagerFactory trust =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(keys);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, trust.getTrustManagers(), null);
    return HttpClient.newBuilder().sslContext(context).build();
  }

  @Test
  void thePagesComeByHttpsAndWantALogin()
      throws IOException, InterruptedException, StoreTrouble, GeneralSecurityException {
    Path file = certificate();
    Listening listening =
        new Listening(
            "127.0.0.1", 0, Set.of("localhost"), new Listening.Door.Certificate(file, PASSWORD));
    assertThat(listening.toString()).doesNotContain(PASSWORD);
    try (Opened opened = Opened.by(folder, listening)) {
      assertThat(opened.server.address())
          .isEqualTo("https://localhost:" + opened.server.port() + "/");
      URI me = URI.create(opened.server.address() + "api/me");
      HttpClient client = trusting(file);
      HttpResponse<String> answer =
          client.send(HttpRequest.newBuilder(me).build(), HttpResponse.BodyHandlers.ofString());
      assertThat(answer.statusCode()).isEqualTo(401);
      assertThat(answer.headers().firstValue("Strict-Transport-Security")).isPresent();
      HttpRequest plain = HttpRequest.newBuilder(opened.at("/api/me")).build();
      assertThatThrownBy(() -> client.send(plain, HttpResponse.BodyHandlers.ofString()))
          .isInstanceOf(IOException.class);
    }
  }
}
