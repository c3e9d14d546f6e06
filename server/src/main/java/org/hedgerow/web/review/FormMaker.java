package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.Content;
import org.hedgerow.review.Examination;
import org.hedgerow.review.Reviews.Dossier;

/** Makes the page of a contribution that is being written. */
record FormMaker(Lexicon lexicon, String token, Content content, FieldErrors errors) {

  /** Before anything has been kept. */
  FormPage fresh(Optional<Examination> examination) {
    return page(DraftStatus.NEW, new DraftVerdictMaker(lexicon).unsaved(content, examination));
  }

  /**
   * @param elsewhere what differs from what was saved elsewhere
   */
  FormPage of(
      Dossier dossier, Optional<Examination> examination, List<Difference> elsewhere, String news) {
    return page(
        DraftStatus.of(dossier, elsewhere, news),
        new DraftVerdictMaker(lexicon).of(dossier, examination));
  }

  private FormPage page(DraftStatus status, DraftVerdict side) {
    return new FormPage(
        token,
        content.proposal().kind(),
        status,
        KindForm.fields(content.proposal(), lexicon, errors),
        new ValueOptions(lexicon).options("Nothing in particular", content.wantedFor()),
        content.note(),
        side,
        errors);
  }
}
