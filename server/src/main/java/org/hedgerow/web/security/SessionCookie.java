package org.hedgerow.web.security;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;
import org.hedgerow.accounts.Secret;
import org.hedgerow.accounts.Session;
import org.hedgerow.accounts.SignInResult;

/** By which a browser shows that somebody is signed in. */
public final class SessionCookie {
  static final String NAME = "hedgerow-session";

  private static final String DEVICE = "hedgerow-device";

  private static final int MAX_LENGTH = 100;

  private final Clients clients;

  public SessionCookie(Clients clients) {
    this.clients = clients;
  }

  Optional<Secret> read(Context context) {
    return read(context, NAME);
  }

  Optional<Secret> read(Context context, String name) {
    return Optional.ofNullable(context.cookie(fullName(context, name)))
        .filter(text -> !text.isEmpty() && text.length() <= MAX_LENGTH)
        .map(Secret::new);
  }

  public void set(Context context, Secret secret) {
    context.cookie(cookie(context, NAME, secret.text(), (int) Session.MAX_LENGTH.toSeconds()));
  }

  /** What this browser was given when somebody signed in here before. */
  public Optional<Secret> device(Context context) {
    return read(context, DEVICE);
  }

  /** Signing out doesn't end it. */
  public void setDevice(Context context, Secret secret) {
    int seconds = (int) SignInResult.DEVICE_KNOWN_FOR.toSeconds();
    context.cookie(cookie(context, DEVICE, secret.text(), seconds));
  }

  public void clear(Context context) {
    context.cookie(cookie(context, NAME, "", 0));
  }

  /** So named, a browser takes it from this very server only, and only by TLS (RFC 6265bis). */
  private String fullName(Context context, String name) {
    return clients.isSecure(context) ? "__Host-" + name : name;
  }

  /** Hidden from scripts, and not sent along when another site's page sends a form. */
  Cookie cookie(Context context, String name, String value, int seconds) {
    Cookie cookie = new Cookie(fullName(context, name), value);
    cookie.setPath("/");
    cookie.setMaxAge(seconds);
    cookie.setHttpOnly(true);
    cookie.setSecure(clients.isSecure(context));
    cookie.setSameSite(SameSite.LAX);
    return cookie;
  }
}
