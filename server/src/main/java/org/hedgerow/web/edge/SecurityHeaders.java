package org.hedgerow.web.edge;

import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.PreEncodedHttpField;

/**
 * The headers by which browsers protect those who use the bank. Every answer has them, also those
 * that the HTTP server gives itself; pages, documents and pictures name a policy of their own.
 */
public final class SecurityHeaders {
  public static final String POLICY = "Content-Security-Policy";

  /** Everything comes from us: no other server, and nothing written into the page itself. */
  public static final String PAGES =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self';"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  /** Swagger UI puts styles into the page and pictures into addresses. */
  public static final String DOCUMENTS =
      "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline';"
          + " img-src 'self' data:; font-src 'self' data:; connect-src 'self';"
          + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

  /** An SVG opened by itself is a document: it may run and fetch nothing. */
  public static final String PICTURES =
      "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'; sandbox";

  private static final PreEncodedHttpField DEFAULT_POLICY =
      new PreEncodedHttpField(POLICY, "frame-ancestors 'none'");
  private static final PreEncodedHttpField NO_SNIFFING =
      new PreEncodedHttpField("X-Content-Type-Options", "nosniff");
  private static final PreEncodedHttpField REFERRER =
      new PreEncodedHttpField("Referrer-Policy", "same-origin");

  private SecurityHeaders() {}

  static void addTo(HttpFields.Mutable headers) {
    headers.put(NO_SNIFFING);
    headers.put(DEFAULT_POLICY);
    headers.put(REFERRER);
  }
}
