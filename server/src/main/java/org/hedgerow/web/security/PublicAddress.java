package org.hedgerow.web.security;

import io.javalin.http.Context;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Where browsers find the bank: as configured, or else where the server listens. The header {@code
 * Host} comes from whoever asks, and would lead people who follow a link astray; it is believed
 * only where it names this machine.
 *
 * @param configured an origin, as in {@code https://words.example}
 * @param host where the server listens
 */
public record PublicAddress(Optional<String> configured, String host) {
  private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");
  private static final Set<String> SCHEMES = Set.of("http", "https");

  /** An address that follows from where the server listens. */
  public static PublicAddress listening(String host) {
    return new PublicAddress(Optional.empty(), host);
  }

  /**
   * The origin that an address consists of; empty if it isn't one, or has more to it than a final
   * slash.
   */
  public static Optional<String> origin(String address) {
    try {
      URI uri =
          new URI(address.endsWith("/") ? address.substring(0, address.length() - 1) : address);
      boolean plain =
          uri.getHost() != null
              && SCHEMES.contains(String.valueOf(uri.getScheme()).toLowerCase(Locale.ROOT))
              && uri.getUserInfo() == null
              && String.valueOf(uri.getRawPath()).isEmpty()
              && uri.getRawQuery() == null
              && uri.getRawFragment() == null;
      return plain ? Optional.of(uri.toString().toLowerCase(Locale.ROOT)) : Optional.empty();
    } catch (URISyntaxException nonsense) {
      return Optional.empty();
    }
  }

  /** What links to this server begin with. */
  String origin(Context context) {
    return configured.orElseGet(
        () -> "http://" + (isThisMachine(context) ? context.host() : listensAt(context)));
  }

  /** Whether a page with that origin is one of ours. */
  boolean isOurs(String origin, Context context) {
    return configured.filter(origin::equalsIgnoreCase).isPresent()
        || ((configured.isEmpty() || isThisMachine(context))
            && authority(origin).equalsIgnoreCase(String.valueOf(context.host())));
  }

  private static String authority(String origin) {
    try {
      return String.valueOf(new URI(origin).getAuthority());
    } catch (URISyntaxException nonsense) {
      return "";
    }
  }

  private boolean isThisMachine(Context context) {
    String name =
        String.valueOf(context.host()).replaceFirst(":\\d*$", "").toLowerCase(Locale.ROOT);
    return LOOPBACK.contains(name) || name.equals(host) || name.equals(local(context));
  }

  private static String listensAt(Context context) {
    return local(context) + ":" + context.req().getLocalPort();
  }

  private static String local(Context context) {
    String address = context.req().getLocalAddr();
    return address.contains(":") && !address.startsWith("[") ? "[" + address + "]" : address;
  }
}
