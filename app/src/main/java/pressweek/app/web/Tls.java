package pressweek.app.web;

import io.javalin.config.JettyConfig;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** HTTPS with the plant's own certificate; TLS 1.2 and 1.3 (RFC 8446). */
final class Tls {
  private Tls() {}

  static void listen(JettyConfig jetty, Listening listening, Listening.Door.Certificate own) {
    jetty.addConnector(
        (server, plain) -> {
          SslContextFactory.Server keys = new SslContextFactory.Server();
          keys.setKeyStorePath(own.store().toAbsolutePath().toString());
          keys.setKeyStoreType("PKCS12");
          keys.setKeyStorePassword(own.password());
          keys.setIncludeProtocols("TLSv1.3", "TLSv1.2");
          HttpConfiguration secure = new HttpConfiguration(plain);
          // the names by which the server goes are checked for every request, see Access
          secure.addCustomizer(new SecureRequestCustomizer(false));
          ServerConnector connector =
              new ServerConnector(
                  server,
                  new SslConnectionFactory(keys, "http/1.1"),
                  new HttpConnectionFactory(secure));
          connector.setHost(listening.host());
          connector.setPort(listening.port());
          return connector;
        });
  }
}
