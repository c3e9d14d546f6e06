package org.hedgerow.web.review;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.pictures.UnusablePictureException;
import org.hedgerow.review.ConflictException;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.Reviews.Dossier;
import org.hedgerow.review.StaleRevisionException;
import org.hedgerow.web.security.RateLimits;
import org.hedgerow.web.security.TooFastException;

/** Writing contributions. Every form is sent to one place, whatever was pressed. */
final class DraftPages {
  private static final String SUBMIT = "submit";

  private final ReviewPageSupport desk;
  private final RateLimits paces;
  private final SentPicture pictures;

  DraftPages(ReviewPageSupport desk, RateLimits paces) {
    this.desk = desk;
    this.paces = paces;
    this.pictures = new SentPicture(desk.review().sendPicture(), paces.uploads());
  }

  /** A choice of kinds, or the empty form of one. */
  void begin(Context context) {
    String word = given(context, "word").toLowerCase(Locale.ROOT);
    Optional<ContributionKind> kind = ContributionKind.labelled(given(context, "kind"));
    if (kind.isEmpty()) {
      desk.show(context, "review/new.jte", NewPage.about(word, desk.newest().get()));
      return;
    }
    Map<String, List<String>> known = new LinkedHashMap<>();
    known.put("spelling", List.of(word));
    known.put("accent-0", List.of(given(context, "accent")));
    known.put("wantedFor", List.of(given(context, "for")));
    Lexicon lexicon = desk.newest().get();
    Content content = KindForm.content(kind.get(), new Fields(known), lexicon);
    showFresh(context, content, FieldErrors.NONE);
  }

  private static String given(Context context, String name) {
    String text = Optional.ofNullable(context.queryParam(name)).orElse("").strip();
    return text.length() > 100 ? text.substring(0, 100) : text;
  }

  /** The form of a draft, or of what was returned. */
  void edit(Context context, Dossier dossier) {
    String done = given(context, "done");
    show(
        context,
        dossier,
        dossier.contribution().content(),
        FieldErrors.NONE,
        List.of(),
        Confirmation.of(done));
  }

  void save(Context context) {
    Actor actor = desk.actor(context);
    Fields fields = Fields.of(context);
    DraftReference draft = new DraftReference(fields.number("id"), fields.number("revision"));
    Content typed = typed(fields);
    try {
      Content content = typed(pictures.take(context, actor, fields));
      Contribution kept = keep(actor, draft, content);
      goOn(context, kept, fields.text("do"));
    } catch (UnusablePictureException unusable) {
      context.status(400);
      showTyped(context, draft, typed, new FieldErrors(error("upload", unusable.getMessage())), "");
    } catch (TooFastException tooFast) {
      context.status(429);
      showTyped(context, draft, typed, new FieldErrors(error("upload", tooFast.getMessage())), "");
    } catch (StaleRevisionException stale) {
      context.status(412);
      showBeside(context, stale.present(), typed, "");
    } catch (ConflictException conflict) {
      context.status(409);
      showBeside(context, conflict.present(), typed, conflict.getMessage() + ".");
    }
  }

  private static List<FieldError> error(
      String field, @org.jspecify.annotations.Nullable String why) {
    return List.of(new FieldError(field, String.valueOf(why)));
  }

  private Content typed(Fields fields) {
    ContributionKind kind =
        ContributionKind.labelled(fields.text("kind"))
            .orElseThrow(() -> new NotFoundException("Such a contribution"));
    return KindForm.content(kind, fields, desk.newest().get());
  }

  private Contribution keep(Actor actor, DraftReference draft, Content content) {
    return draft.isKept()
        ? desk.review().revise().execute(actor, draft.id(), draft.revision(), content)
        : desk.review().write().execute(actor, content);
  }

  private void goOn(Context context, Contribution kept, String deed) {
    if (deed.equals(SUBMIT)) {
      submit(context, kept);
    } else if (ReviewPageSupport.isPart(context)) {
      context.header("HX-Replace-Url", address(kept));
      edit(context, desk.review().reviews().open(desk.actor(context), kept.id()));
    } else {
      desk.goOn(context, address(kept) + (deed.equals("save") ? "?done=saved" : ""));
    }
  }

  private static String address(Contribution kept) {
    return "/contributions/" + kept.id();
  }

  private void submit(Context context, Contribution kept) {
    Actor actor = desk.actor(context);
    try {
      paces.submissions().count(context);
      desk.review().submit().execute(actor, kept.id(), kept.revision());
      desk.goOn(context, address(kept) + "?done=submitted");
    } catch (ConflictException conflict) {
      requireSubmitted(conflict, kept);
      desk.goOn(context, address(kept) + "?done=submitted");
    } catch (TooFastException tooFast) {
      context.status(429);
      showKept(context, kept, FieldErrors.NONE, String.valueOf(tooFast.getMessage()));
    } catch (RejectedException refused) {
      context.status(400);
      showKept(context, kept, new FieldErrors(refused.errors()), "");
    }
  }

  /** Whoever clicks twice sends the same form twice: the first has done it. */
  private static void requireSubmitted(ConflictException conflict, Contribution kept) {
    Contribution present = conflict.present();
    if (present.state() != ContributionState.SUBMITTED
        || !present.content().equals(kept.content())) {
      throw conflict;
    }
  }

  private void showKept(Context context, Contribution kept, FieldErrors errors, String news) {
    Dossier dossier = desk.review().reviews().open(desk.actor(context), kept.id());
    show(context, dossier, kept.content(), errors, List.of(), news);
  }

  /** Nothing typed is lost: it stands in the form, and what is there otherwise stands beside. */
  private void showBeside(Context context, Contribution present, Content typed, String news) {
    wholeForm(context);
    Describer describer = new Describer(desk.newest().get());
    List<Difference> differences =
        Differences.between(describer.everything(present.content()), describer.everything(typed));
    show(
        context,
        desk.review().reviews().open(desk.actor(context), present.id()),
        typed,
        FieldErrors.NONE,
        differences,
        news);
  }

  private void showTyped(
      Context context, DraftReference draft, Content typed, FieldErrors errors, String news) {
    wholeForm(context);
    if (draft.isKept()) {
      Dossier dossier = desk.review().reviews().open(desk.actor(context), draft.id());
      show(context, dossier, typed, errors, List.of(), news);
    } else {
      showFresh(context, typed, errors);
    }
  }

  private void showFresh(Context context, Content content, FieldErrors errors) {
    desk.show(
        context,
        "review/form.jte",
        new FormMaker(desk.newest().get(), desk.token(context), content, errors)
            .fresh(desk.review().reviews().examine(desk.actor(context), content)));
  }

  /** Tells the script to replace more than it asked for. */
  private static void wholeForm(Context context) {
    context.header("HX-Retarget", "#work").header("HX-Reselect", "#work");
  }

  private void show(
      Context context,
      Dossier dossier,
      Content content,
      FieldErrors errors,
      List<Difference> elsewhere,
      String news) {
    FormMaker maker = new FormMaker(desk.newest().get(), desk.token(context), content, errors);
    desk.show(
        context,
        "review/form.jte",
        maker.of(
            dossier,
            desk.review().reviews().examine(desk.actor(context), content),
            elsewhere,
            news));
  }
}
