package org.hedgerow.web.security;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.hedgerow.accounts.Secret;
import org.hedgerow.accounts.Secrets;

/**
 * Signs that forms carry, by which we know our own (OWASP's Cross-Site Request Forgery Prevention
 * Cheat Sheet, "signed double submit"). Each is bound to the session, or to a cookie that visitors
 * get for the purpose, so that nobody can be made to sign in as somebody else either.
 */
public final class FormTokens {
  /** The name of the field in forms. */
  public static final String FIELD = "form-token";

  /** For scripts, which send no form. */
  static final String HEADER = "Hedgerow-Form-Token";

  private static final String VISITORS_COOKIE = "hedgerow-form";
  private static final int UNTIL_BROWSER_ENDS = -1;

  private final SessionCookie cookies;
  private final Secrets secrets = new Secrets();

  public FormTokens(SessionCookie cookies) {
    this.cookies = cookies;
  }

  /** For the forms of the page that is being made. */
  public String token(Context context) {
    return sign(key(context).orElseGet(() -> fresh(context)));
  }

  private Secret fresh(Context context) {
    Secret secret = secrets.fresh();
    context.cookie(cookies.cookie(context, VISITORS_COOKIE, secret.text(), UNTIL_BROWSER_ENDS));
    return secret;
  }

  private Optional<Secret> key(Context context) {
    return Identity.of(context)
        .session()
        .map(Identity.Login::cookie)
        .or(() -> cookies.read(context, VISITORS_COOKIE));
  }

  boolean isOurs(Context context) {
    Optional<String> sent =
        Optional.ofNullable(context.header(HEADER))
            .or(() -> Optional.ofNullable(context.formParam(FIELD)));
    return sent.isPresent()
        && key(context).filter(key -> isEqual(sign(key), sent.get())).isPresent();
  }

  private static boolean isEqual(String one, String other) {
    return MessageDigest.isEqual(one.getBytes(UTF_8), other.getBytes(UTF_8));
  }

  private static String sign(Secret key) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(key.text().getBytes(UTF_8), "HmacSHA256"));
      return Base64.getUrlEncoder()
          .withoutPadding()
          .encodeToString(mac.doFinal(FIELD.getBytes(UTF_8)));
    } catch (GeneralSecurityException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
