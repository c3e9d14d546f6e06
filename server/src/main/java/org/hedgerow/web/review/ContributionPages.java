package org.hedgerow.web.review;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.Role;
import org.hedgerow.review.ConflictException;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.Reviews.Dossier;
import org.hedgerow.review.StaleRevisionException;
import org.hedgerow.review.Upload;
import org.hedgerow.web.http.PictureAnswer;

/** One's own contributions, and each of anybody's. */
final class ContributionPages {
  private final ReviewPageSupport desk;
  private final DraftPages drafts;

  ContributionPages(ReviewPageSupport desk, DraftPages drafts) {
    this.desk = desk;
    this.drafts = drafts;
  }

  void list(Context context) {
    desk.show(context, "review/contributions.jte", new OwnContributionsMaker(desk).page(context));
  }

  void show(Context context) {
    Dossier dossier = dossier(context);
    boolean mine = isMine(context, dossier.contribution());
    if (mine && dossier.contribution().state().isOpen()) {
      drafts.edit(context, dossier);
    } else {
      show(context, dossier, Confirmation.of(done(context)), "");
    }
  }

  private static String done(Context context) {
    return Optional.ofNullable(context.queryParam("done")).orElse("");
  }

  private Dossier dossier(Context context) {
    return desk.review().reviews().open(desk.actor(context), ReviewPageSupport.id(context));
  }

  private boolean isMine(Context context, Contribution contribution) {
    return desk.actor(context).is(contribution.author().accountId());
  }

  private void show(Context context, Dossier dossier, String news, String problem) {
    Lexicon lexicon = desk.newest().get();
    Contribution contribution = dossier.contribution();
    boolean mine = isMine(context, contribution);
    desk.show(
        context,
        "review/shown.jte",
        new ShownPage(
            desk.token(context),
            contribution.id(),
            contribution.revision(),
            new Describer(lexicon).view(contribution),
            contribution.state().label(),
            mine
                ? ReviewWording.of(contribution.state())
                : ReviewWording.ofOthers(contribution.state()),
            contribution.author().name(),
            Times.of(contribution.made()),
            contribution.edition(),
            dossier.decisions().stream()
                .map(each -> EventView.of(each, contribution.revision()))
                .toList(),
            new ValueOptions(lexicon)
                .fitted(
                    contribution.serves(),
                    DraftVerdictMaker.verdict(contribution.kind(), contribution.remarks())),
            mine,
            !mine && desk.actor(context).role().allows(Role.REVIEWER),
            news,
            problem));
  }

  void takeBack(Context context) {
    Fields fields = Fields.of(context);
    int id = ReviewPageSupport.id(context);
    orTell(
        context,
        () -> {
          desk.review().takeBack().execute(desk.actor(context), id, fields.number("revision"));
          desk.goOn(context, "/contributions/" + id + "?done=taken-back");
        });
  }

  void discard(Context context) {
    Fields fields = Fields.of(context);
    int id = ReviewPageSupport.id(context);
    orTell(
        context,
        () -> {
          desk.review().discard().execute(desk.actor(context), id, fields.number("revision"));
          desk.goOn(context, "/contributions?done=discarded");
        });
  }

  /** What happened meanwhile is told kindly, with the contribution as it is now. */
  private void orTell(Context context, Runnable work) {
    try {
      work.run();
    } catch (StaleRevisionException stale) {
      context.status(412);
      show(context, dossier(context), "", "It has been changed meanwhile. This is how it is now.");
    } catch (ConflictException conflict) {
      context.status(409);
      show(context, dossier(context), "", conflict.getMessage() + ".");
    }
  }

  /** The picture of a contribution, which only people who are signed in may see. */
  void picture(Context context) {
    Actor actor = desk.actor(context);
    Upload upload =
        KindForm.upload(dossier(context).contribution().proposal())
            .flatMap(id -> desk.review().reviews().upload(actor, id))
            .orElseThrow(() -> new NotFoundException("The picture"));
    context.header(Header.CACHE_CONTROL, "private, max-age=3600");
    PictureAnswer.send(context, upload.picture().mediaType(), upload.picture().content());
  }
}
