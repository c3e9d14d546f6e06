package org.hedgerow.web.security;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Optional;
import org.hedgerow.accounts.Network;
import org.hedgerow.operations.UnavailableException;

/**
 * Where requests come from, and where browsers find this server.
 *
 * @param behindTls whether a server before this one speaks TLS with browsers and can be believed
 */
public record Clients(boolean behindTls, PublicAddress address) {

  /** With an address that follows from where the server listens: this machine. */
  public Clients(boolean behindTls) {
    this(behindTls, PublicAddress.listening("127.0.0.1"));
  }

  public boolean isSecure(Context context) {
    return behindTls || context.req().isSecure();
  }

  /** What links to this server begin with, as in {@code https://words.example}. */
  public String origin(Context context) {
    return address.origin(context);
  }

  /** The network address; of what a server before this one adds, only the last can be believed. */
  public String address(Context context) {
    return Optional.ofNullable(context.header(Header.X_FORWARDED_FOR))
        .filter(header -> behindTls)
        .map(header -> header.substring(header.lastIndexOf(',') + 1).strip())
        .filter(address -> !address.isEmpty() && address.length() <= 64)
        .orElseGet(context::ip);
  }

  /**
   * By which a client is counted: the account, or a visitor's network. The records of accounts may
   * be out of reach; then everybody is a visitor.
   */
  String key(Context context) {
    try {
      return Identity.of(context)
          .actor()
          .account()
          .map(account -> "account " + account.id())
          .orElseGet(() -> Network.of(address(context)));
    } catch (UnavailableException unknown) {
      return Network.of(address(context));
    }
  }

  /** What the browser says of itself. */
  public String name(Context context) {
    return Optional.ofNullable(context.userAgent()).orElse("");
  }
}
