package org.hedgerow.web.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.Decision;
import org.hedgerow.review.Reviews.Dossier;

/** Assembles the review page: proposal, findings, similar words, history. */
final class DecisionMaker {
  private static final int MAX_BESIDE = 12;

  private final ReviewPageSupport desk;
  private final Actor actor;
  private final String token;
  private final Lexicon lexicon;

  DecisionMaker(ReviewPageSupport desk, Actor actor, String token) {
    this.desk = desk;
    this.actor = actor;
    this.token = token;
    this.lexicon = desk.newest().get();
  }

  DecisionPage page(
      int id,
      Neighbours neighbours,
      Optional<Undo> undo,
      String news,
      String problem,
      String comment) {
    Dossier dossier = desk.review().reviews().open(actor, id);
    Contribution contribution = dossier.contribution();
    Verdict verdict = DraftVerdictMaker.verdict(contribution.kind(), contribution.remarks());
    String spelling = KindForm.spelling(contribution.proposal());
    Optional<Correspondence> wanted = wanted(contribution);
    return new DecisionPage(
        token,
        id,
        contribution.revision(),
        new Describer(lexicon).view(contribution),
        contribution.state().label(),
        ReviewWording.ofOthers(contribution.state()),
        contribution.author().name(),
        Times.of(contribution.submitted().orElse(contribution.changed())),
        contribution.edition(),
        actor.is(contribution.author().accountId()),
        contribution.submitted().isPresent() && QueueRow.isJudged(contribution.kind())
            ? verdict.label()
            : "",
        new DraftVerdictMaker(lexicon).headline(contribution.content(), verdict),
        reasons(dossier, spelling),
        new ValueOptions(lexicon).fitted(contribution.serves(), verdict),
        changes(dossier),
        near(spelling),
        wanted.map(value -> beside(value, spelling)).orElse(List.of()),
        wanted.map(value -> new ValueOptions(lexicon).words(value.label())).orElse(""),
        dossier.decisions().stream()
            .map(each -> EventView.of(each, contribution.revision()))
            .toList(),
        dossier.others().stream().map(OtherView::of).toList(),
        dossier.errors().stream().map(FieldError::message).distinct().toList(),
        neighbours.place(),
        neighbours.before(),
        neighbours.next(),
        undo,
        news,
        problem,
        comment);
  }

  private List<FindingView> reasons(Dossier dossier, String spelling) {
    Contribution contribution = dossier.contribution();
    Map<String, String> overruled = new HashMap<>();
    for (Decision each : dossier.decisions()) {
      if (each.revision() == contribution.revision()) {
        each.overruled().ifPresent(code -> overruled.put(code, each.comment()));
      }
    }
    return FindingView.all(
        contribution.kind(), contribution.remarks(), spelling, lexicon, overruled);
  }

  private List<Difference> changes(Dossier dossier) {
    return dossier.contribution().state() == ContributionState.SUBMITTED
            && dossier.errors().isEmpty()
        ? new Effect(desk.review().reviews(), lexicon).of(actor, dossier.contribution())
        : List.of();
  }

  private List<String> near(String spelling) {
    return spelling.isEmpty() || lexicon.word(spelling).isPresent()
        ? List.of()
        : lexicon.nearby(spelling);
  }

  private Optional<Correspondence> wanted(Contribution contribution) {
    return contribution.serves().stream()
        .flatMap(
            label ->
                lexicon.catalogue().correspondences().stream()
                    .filter(each -> each.isTaught() && each.label().equals(label)))
        .findFirst();
  }

  private List<String> beside(Correspondence value, String spelling) {
    String accent = lexicon.accents().get(0).accent().tag();
    return lexicon.find(WordQuery.of(accent, Standard.of(value))).stream()
        .map(Word::spelling)
        .filter(each -> !each.equals(spelling))
        .limit(MAX_BESIDE)
        .toList();
  }
}
