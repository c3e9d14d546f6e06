package org.hedgerow.web.security;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;
import org.hedgerow.accounts.Secret;
import org.hedgerow.accounts.Session;

/** By which a browser shows that somebody is signed in. */
public final class SessionCookie {
  static final String NAME = "hedgerow-session";

  private static final int LONGEST = 100;

  private final Clients clients;

  public SessionCookie(Clients clients) {
    this.clients = clients;
  }

  static Optional<Secret> read(Context context) {
    return read(context, NAME);
  }

  static Optional<Secret> read(Context context, String name) {
    return Optional.ofNullable(context.cookie(name))
        .filter(text -> !text.isEmpty() && text.length() <= LONGEST)
        .map(Secret::new);
  }

  public void set(Context context, Secret secret) {
    context.cookie(cookie(context, NAME, secret.text(), (int) Session.LONGEST.toSeconds()));
  }

  public void clear(Context context) {
    context.cookie(cookie(context, NAME, "", 0));
  }

  /** Hidden from scripts, and not sent along when another site's page sends a form. */
  Cookie cookie(Context context, String name, String value, int seconds) {
    Cookie cookie = new Cookie(name, value);
    cookie.setPath("/");
    cookie.setMaxAge(seconds);
    cookie.setHttpOnly(true);
    cookie.setSecure(clients.isSecure(context));
    cookie.setSameSite(SameSite.LAX);
    return cookie;
  }
}
