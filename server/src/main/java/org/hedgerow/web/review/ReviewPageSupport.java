package org.hedgerow.web.review;

import io.javalin.http.Context;
import io.javalin.http.Header;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.security.FormTokens;
import org.hedgerow.web.security.Identity;

/**
 * What all these pages need.
 *
 * @param newest the newest edition
 */
record ReviewPageSupport(
    ReviewServices review, Supplier<Lexicon> newest, PageWriter writer, FormTokens forms) {

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

  int accountId(Context context) {
    return actor(context).requireAccount().id();
  }

  String token(Context context) {
    return forms.token(context);
  }

  /** The number of a contribution in an address. */
  static int id(Context context) {
    int id = Fields.number(context.pathParam("id"), 0);
    if (id == 0) {
      throw new NotFoundException("The contribution");
    }
    return id;
  }

  /** Whether a script of ours asks, and wants only a part of the page. */
  static boolean isPart(Context context) {
    return "true".equals(context.header("HX-Request"));
  }
}
