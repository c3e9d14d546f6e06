package org.hedgerow.web.curriculum;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Plans;
import org.hedgerow.review.curriculum.ChangeCurriculum;
import org.hedgerow.review.curriculum.SequenceDraft;
import org.hedgerow.review.curriculum.SetKind;

/** The orders of teaching that a centre chooses from. */
final class SequencesPages extends SetPages<Sequence, SequenceDraft> {
  private static final String STEPS = "steps";

  SequencesPages(SetPageSupport support, ChangeCurriculum change) {
    super(
        SetKind.SEQUENCES,
        "/centre/sequences",
        "curriculum/sequencesets.jte",
        "curriculum/sequenceform.jte",
        support,
        change);
  }

  /** With the computed one, in the accent that the bank names first. */
  @Override
  List<Sequence> all(Lexicon edition) {
    return edition.plans().sequences(edition.accents().get(0).accent().tag());
  }

  @Override
  String fixed(Sequence sequence, Lexicon edition) {
    return sequence.name().equals(Plans.COMPUTED) ? "It is worked out by the program." : "";
  }

  @Override
  SequenceDraft begin(Optional<Sequence> model, Lexicon edition) {
    List<List<String>> steps =
        model.map(SequenceDraft::of).map(SequenceDraft::steps).orElse(List.of());
    return new SequenceDraft("", "", "", steps);
  }

  @Override
  SequenceDraft typed(Context context) {
    return new SequenceDraft(
        SetPageSupport.sent(context, "name"),
        SetPageSupport.sent(context, "title"),
        SetPageSupport.sent(context, "note"),
        SequenceDraft.steps(SetPageSupport.sent(context, STEPS)));
  }

  @Override
  Object form(Context context, SetForm<SequenceDraft> form, Lexicon newest) {
    String typed = SetPageSupport.sent(context, STEPS);
    return new SequenceForm(form, typed.isEmpty() ? form.draft().stepsInLines() : typed);
  }
}
