package org.hedgerow.web.people;

import io.javalin.http.Context;
import io.javalin.http.Header;
import io.javalin.http.HttpStatus;
import java.util.Map;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.CachedCentre;
import org.hedgerow.operations.Actor;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.FormTokens;
import org.hedgerow.web.security.Identity;
import org.hedgerow.web.security.SessionCookie;

/** What all pages about accounts need. */
record AccountPageSupport(
    AccountServices accounts,
    CachedCentre centre,
    PageWriter writer,
    FormTokens forms,
    SessionCookie cookies,
    Clients clients) {

  void show(Context context, String template, Object page) {
    writer.write(context, template, Map.of("page", page));
    context.header(Header.CACHE_CONTROL, "no-store");
  }

  /** After something was done, so that loading the page again doesn't do it again. */
  void goOn(Context context, String address) {
    context.header(Header.CACHE_CONTROL, "no-store");
    context.redirect(address, HttpStatus.SEE_OTHER);
  }

  Actor actor(Context context) {
    return Identity.of(context).actor();
  }

  String token(Context context) {
    return forms.token(context);
  }

  /** The whole address of a link. */
  String link(Context context, String secret) {
    return clients.origin(context) + "/welcome/" + secret;
  }
}
