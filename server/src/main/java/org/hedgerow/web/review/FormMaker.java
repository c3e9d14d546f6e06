package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Sound;
import org.hedgerow.review.Content;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.Decision;
import org.hedgerow.review.DecisionKind;
import org.hedgerow.review.Examination;
import org.hedgerow.review.NewPicture;
import org.hedgerow.review.NewPronunciation;
import org.hedgerow.review.NewSentence;
import org.hedgerow.review.NewWord;
import org.hedgerow.review.Proposal;
import org.hedgerow.review.ProposedPronunciation;
import org.hedgerow.review.Realignment;
import org.hedgerow.review.Retag;
import org.hedgerow.review.Reviews.Dossier;
import org.hedgerow.review.Withdrawal;
import org.hedgerow.review.WordLabels;

/** Makes the page of a contribution that is being written. */
final class FormMaker {
  private final Lexicon lexicon;
  private final String token;
  private final Content content;
  private final FieldErrors errors;

  FormMaker(Lexicon lexicon, String token, Content content, FieldErrors errors) {
    this.lexicon = lexicon;
    this.token = token;
    this.content = content;
    this.errors = errors;
  }

  /** Before anything has been kept. */
  FormPage fresh(Optional<Examination> examination) {
    return page(
        DraftReference.NONE,
        new DraftVerdictMaker(lexicon).unsaved(content, examination),
        Optional.empty(),
        List.of(),
        "",
        true);
  }

  /**
   * @param elsewhere what differs from what was saved elsewhere
   */
  FormPage of(
      Dossier dossier, Optional<Examination> examination, List<Difference> elsewhere, String news) {
    return page(
        DraftReference.of(dossier.contribution()),
        new DraftVerdictMaker(lexicon).of(dossier, examination),
        lastReturn(dossier),
        elsewhere,
        news,
        dossier.contribution().state() == ContributionState.DRAFT && dossier.decisions().isEmpty());
  }

  private static Optional<Decision> lastReturn(Dossier dossier) {
    return dossier.contribution().state() != ContributionState.RETURNED
        ? Optional.empty()
        : dossier.decisions().stream()
            .filter(each -> each.kind() == DecisionKind.RETURN)
            .reduce((first, second) -> second);
  }

  private FormPage page(
      DraftReference draft,
      DraftVerdict side,
      Optional<Decision> returned,
      List<Difference> elsewhere,
      String news,
      boolean discardable) {
    Proposal proposal = content.proposal();
    String spelling = spelling(proposal);
    return new FormPage(
        token,
        draft.id(),
        draft.revision(),
        proposal.kind(),
        spelling,
        lexicon.word(spelling).isPresent(),
        sayings(proposal, spelling),
        ways(proposal, spelling),
        proposal instanceof NewPronunciation said && said.instead(),
        labels(proposal),
        proposal instanceof NewPicture picture
            ? Optional.of(PictureFields.of(picture, errors.at("upload")))
            : Optional.empty(),
        proposal instanceof NewSentence sentence
            ? Optional.of(SentenceView.of(sentence, lexicon))
            : Optional.empty(),
        proposal instanceof Withdrawal gone ? gone.sentence() : "",
        proposal instanceof Withdrawal gone ? gone.reason() : "",
        new ValueOptions(lexicon).options("Nothing in particular", content.wantedFor()),
        content.note(),
        side,
        returned.map(Decision::comment).orElse(""),
        returned.map(each -> each.by().name()).orElse(""),
        elsewhere,
        errors,
        news,
        discardable);
  }

  static String spelling(Proposal proposal) {
    boolean ofSentence =
        proposal instanceof NewSentence
            || (proposal instanceof Withdrawal gone && !gone.sentence().isEmpty());
    return ofSentence ? "" : proposal.subject();
  }

  private List<PronunciationFields> sayings(Proposal proposal, String spelling) {
    PronunciationFieldsMaker views = new PronunciationFieldsMaker(lexicon, spelling, errors);
    if (proposal instanceof NewWord word) {
      return views.all(word.pronunciations());
    }
    if (proposal instanceof NewPronunciation said) {
      return List.of(views.one(said.saying()));
    }
    return proposal instanceof Realignment aligned
        ? List.of(views.one(aligned.saying()))
        : List.of();
  }

  /** As the value of a choice, the accent's tag and the sounds. */
  private List<Option> ways(Proposal proposal, String spelling) {
    if (!(proposal instanceof Realignment aligned)) {
      return List.of();
    }
    ProposedPronunciation saying = aligned.saying();
    Set<Option> ways = new LinkedHashSet<>();
    lexicon
        .word(spelling)
        .ifPresent(
            word ->
                word.pronunciations()
                    .forEach(
                        each ->
                            ways.add(
                                Option.of(
                                    each.accent() + " " + Sound.spaced(each.sounds()),
                                    "%s: /%s/"
                                        .formatted(
                                            lexicon
                                                .accent(each.accent())
                                                .orElseThrow()
                                                .accent()
                                                .name(),
                                            Sound.spaced(each.sounds())),
                                    saying.accent() + " " + saying.sounds()))));
    return new ArrayList<>(ways);
  }

  private Optional<LabelsView> labels(Proposal proposal) {
    Optional<WordLabels> labels =
        proposal instanceof NewWord word
            ? Optional.of(word.labels())
            : proposal instanceof Retag retag ? Optional.of(retag.labels()) : Optional.empty();
    return labels.map(
        each ->
            LabelsView.of(
                each,
                proposal instanceof Retag retag
                    ? lexicon.word(retag.spelling())
                    : Optional.empty()));
  }
}
