package org.hedgerow.web.review;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.FieldError;
import org.hedgerow.reading.Verdict;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ContributionFinding;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.Examination;
import org.hedgerow.review.Reviews.Dossier;

/** Says what the machine makes of a draft. */
record DraftVerdictMaker(Lexicon lexicon) {

  /** Before anything has been kept. */
  DraftVerdict unsaved(Content content, Optional<Examination> examination) {
    return view(content, Optional.empty(), examination, new Notes(List.of(), List.of()));
  }

  DraftVerdict of(Dossier dossier, Optional<Examination> examination) {
    Contribution contribution = dossier.contribution();
    return view(
        contribution.content(),
        Optional.of(contribution.changed()),
        examination,
        new Notes(
            dossier.errors().stream().map(FieldError::message).distinct().toList(),
            dossier.others().stream().map(OtherView::of).toList()));
  }

  private record Notes(List<String> missing, List<OtherView> others) {}

  private DraftVerdict view(
      Content content, Optional<Instant> saved, Optional<Examination> examination, Notes notes) {
    List<ContributionFinding> remarks = examination.map(Examination::remarks).orElse(List.of());
    ContributionKind kind = content.proposal().kind();
    Verdict verdict = verdict(kind, remarks);
    boolean isJudged = examination.isPresent() && QueueRow.isJudged(kind);
    return new DraftVerdict(
        saved.isPresent(),
        Times.of(saved.orElse(Instant.EPOCH)),
        isJudged ? verdict.label() : "",
        isJudged ? headline(content, verdict) : "",
        FindingView.all(kind, remarks, content.proposal().subject(), lexicon, Map.of()),
        notes.missing(),
        new ValueOptions(lexicon)
            .fitted(
                examination.map(Examination::serves).orElse(List.of()).stream()
                    .filter(each -> !each.equals(content.wantedFor()))
                    .toList(),
                verdict),
        notes.others());
  }

  static Verdict verdict(ContributionKind kind, List<ContributionFinding> remarks) {
    return remarks.stream()
        .map(remark -> FindingView.verdict(kind, remark))
        .reduce(Verdict.PASS, Verdict::and);
  }

  String headline(Content content, Verdict verdict) {
    String target = KindForm.target(content);
    if (target.isEmpty()) {
      return switch (verdict) {
        case PASS -> "No problems found";
        case LOOK -> "A person should look at this";
        case FAIL -> "It can be in the bank, but in no list by the usual rules";
      };
    }
    String words = new ValueOptions(lexicon).words(target);
    return switch (verdict) {
      case PASS -> "It passes for " + words;
      case LOOK -> "For %s a person should look at this".formatted(words);
      case FAIL -> "It doesn’t pass for " + words;
    };
  }
}
