package org.hedgerow.app;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.hedgerow.accounts.ApiTokens;
import org.hedgerow.accounts.Secret;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.MetricsAccess;
import org.hedgerow.web.security.PublicAddress;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Who reaches the server, and at which address. */
final class WebOptions {
  private static final int SHORTEST_TOKEN = 16;

  /** Who may read measurements. */
  enum Metrics {
    LOCAL,
    OPEN
  }

  @Option(
      names = "--public-url",
      paramLabel = "URL",
      description =
          "Where browsers find the server, as in https://words.example. Links for invitations and"
              + " passwords begin with it (default: the address to listen on).")
  private @Nullable String publicUrl;

  @Option(
      names = "--behind-tls",
      description =
          "A server before this one speaks TLS with browsers and says in X-Forwarded-For where they are.")
  private boolean behindTls;

  @Option(
      names = "--metrics",
      paramLabel = "WHO",
      description =
          "Who may read /metrics without a token: local, programs on this machine, or open, anybody"
              + " (default: local).")
  private Metrics metrics = Metrics.LOCAL;

  @Option(
      names = "--metrics-token-file",
      paramLabel = "FILE",
      description =
          "A file with a token, of 16 characters or more, that /metrics may be read with from"
              + " elsewhere. A token of an administrator serves too.")
  private @Nullable Path metricsTokenFile;

  @Spec(Spec.Target.MIXEE)
  private @Nullable CommandSpec spec;

  boolean behindTls() {
    return behindTls;
  }

  /** The origin that was configured. */
  Optional<String> publicOrigin() {
    return Optional.ofNullable(publicUrl).map(this::origin);
  }

  private String origin(String url) {
    return PublicAddress.origin(url)
        .orElseThrow(
            () ->
                wrong(
                    "--public-url must be an address without a path, as in https://words.example,"
                        + " not "
                        + url));
  }

  /**
   * @param host where the server listens
   */
  Clients clients(String host) {
    return new Clients(behindTls, new PublicAddress(publicOrigin(), host));
  }

  MetricsAccess metrics(ApiTokens tokens) {
    return new MetricsAccess(metrics == Metrics.OPEN, metricsToken(), tokens);
  }

  private Optional<Secret> metricsToken() {
    return Optional.ofNullable(metricsTokenFile).map(this::token);
  }

  private Secret token(Path file) {
    String text = read(file);
    if (text.length() < SHORTEST_TOKEN) {
      throw wrong("The token in %s has fewer than %d characters.".formatted(file, SHORTEST_TOKEN));
    }
    return new Secret(text);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file).strip();
    } catch (IOException problem) {
      throw new CommandFailedException(
          "The token file %s can't be read: %s.".formatted(file, problem.getMessage()));
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(requireNonNull(spec).commandLine(), message);
  }
}
