package org.hedgerow.web.pages.teaching;

import io.javalin.http.Context;
import io.javalin.http.Header;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.accounts.RefusedException;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.pages.PageWriter;
import org.hedgerow.web.security.FormTokens;

/** What the pages about rules and sequences share. */
record TeachingDesk(Supplier<Lexicon> newest, PageWriter writer, FormTokens forms) {
  private static final int LONGEST = 20_000;

  void show(Context context, String template, Object page) {
    writer.write(context, "teaching/" + template, Map.of("page", page));
    context.header(Header.CACHE_CONTROL, "no-store");
  }

  /** After something was done, so that loading the page again doesn't do it again. */
  void goOn(Context context, String path, int edition) {
    context.header(Header.CACHE_CONTROL, "no-store");
    context.redirect(path + "?edition=" + edition, HttpStatus.SEE_OTHER);
  }

  String token(Context context) {
    return forms.token(context);
  }

  /** What was sent in a field, cut off where nobody types on. */
  static String sent(Context context, String field) {
    String text = Optional.ofNullable(context.formParam(field)).orElse("");
    return text.length() > LONGEST ? text.substring(0, LONGEST) : text;
  }

  static String asked(Context context, String parameter) {
    return Optional.ofNullable(context.queryParam(parameter)).orElse("");
  }

  /** The edition that has just been made, in words; empty if none was. */
  static String done(Context context) {
    String edition = asked(context, "edition");
    return edition.matches("[0-9]{1,9}")
        ? "Done. Edition %s has it; the editions before keep what they had.".formatted(edition)
        : "";
  }

  static Map<String, String> errors(RefusedException refused) {
    Map<String, String> errors = new LinkedHashMap<>();
    for (FieldFault fault : refused.faults()) {
      errors.merge(fault.field(), fault.message(), (one, other) -> one + " " + other);
    }
    return errors;
  }
}
