package org.hedgerow.web.security;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.security.MessageDigest;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hedgerow.accounts.ApiTokens;
import org.hedgerow.accounts.Secret;
import org.hedgerow.operations.Role;

/**
 * Who may read measurements: a program on this machine, one with the token that was configured for
 * it, or one with an administrator's token. A request that another server passed on comes from
 * elsewhere, wherever that server runs.
 *
 * @param open whether anybody may
 * @param token the one that was configured
 */
public record MetricsAccess(boolean open, Optional<Secret> token, ApiTokens tokens)
    implements Predicate<Context> {
  private static final List<String> PASSED_ON =
      List.of("X-Forwarded-For", "Forwarded", "X-Real-IP", "Via");

  @Override
  public boolean test(Context context) {
    return open
        || isLocal(context)
        || Bearer.of(context)
            .filter(sent -> isConfigured(sent) || isAdministrators(sent))
            .isPresent();
  }

  private static boolean isLocal(Context context) {
    return PASSED_ON.stream().noneMatch(header -> context.header(header) != null)
        && isLoopback(context.req().getRemoteAddr())
        && context.header(Header.ORIGIN) == null;
  }

  private static boolean isLoopback(String address) {
    try {
      return InetAddress.getByName(address).isLoopbackAddress();
    } catch (UnknownHostException nonsense) {
      return false;
    }
  }

  private boolean isConfigured(Secret sent) {
    return token
        .filter(
            known ->
                MessageDigest.isEqual(known.text().getBytes(UTF_8), sent.text().getBytes(UTF_8)))
        .isPresent();
  }

  private boolean isAdministrators(Secret sent) {
    return tokens
        .find(sent)
        .filter(found -> found.actor().role().allows(Role.ADMINISTRATOR))
        .isPresent();
  }
}
