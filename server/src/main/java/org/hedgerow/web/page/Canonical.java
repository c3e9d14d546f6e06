package org.hedgerow.web.page;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.hedgerow.web.query.ParameterNames;
import org.jspecify.annotations.Nullable;

/**
 * Keeps to one address for what is shown: defaults and empty fields aren't in it, and parameters
 * stand in their order.
 */
public final class Canonical {

  private static final String REQUEST = "HX-Request";
  private static final String REPLACE = "HX-Replace-Url";
  private static final String PUSH = "HX-Push-Url";

  private Canonical() {}

  /**
   * Whether the page may be shown. If it was asked for by another address, the browser is sent to
   * this one; a script that swaps parts of the page is only told it.
   */
  public static boolean is(Context context, String address) {
    if (context.header(REQUEST) != null) {
      context.header(isSearch(address) ? REPLACE : PUSH, address);
      return true;
    }
    if (parameters(query(address)).equals(parameters(context.queryString()))) {
      return true;
    }
    redirect(context, address);
    return false;
  }

  /** Typing in the search field should leave no trace in the browser's history. */
  private static boolean isSearch(String address) {
    return address.equals("/") || address.startsWith("/?" + ParameterNames.FIND + "=");
  }

  public static void redirect(Context context, String address) {
    context.header(Header.CACHE_CONTROL, "no-cache").redirect(address);
  }

  private static String query(String address) {
    return address.substring(address.indexOf('?') + 1).replaceFirst("^/.*", "");
  }

  private static List<String> parameters(@Nullable String query) {
    return query == null || query.isEmpty()
        ? List.of()
        : Arrays.stream(query.split("&", -1)).map(Canonical::decoded).toList();
  }

  private static String decoded(String text) {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException malformed) {
      return text;
    }
  }
}
