package org.hedgerow.web.review;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.Verdict;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.Examination;
import org.hedgerow.review.Kind;
import org.hedgerow.review.NewSentence;
import org.hedgerow.review.Remark;
import org.hedgerow.review.Reviews.Dossier;

/** Says what the machine makes of a draft. */
record SideMaker(Lexicon lexicon) {

  /** Before anything has been kept. */
  SideView unsaved(Content content, Optional<Examination> examination) {
    return view(content, Optional.empty(), examination, new Notes(List.of(), List.of()));
  }

  SideView of(Dossier dossier, Optional<Examination> examination) {
    Contribution contribution = dossier.contribution();
    return view(
        contribution.content(),
        Optional.of(contribution.changed()),
        examination,
        new Notes(
            dossier.faults().stream().map(FieldFault::message).distinct().toList(),
            dossier.others().stream().map(OtherView::of).toList()));
  }

  private record Notes(List<String> missing, List<OtherView> others) {}

  private SideView view(
      Content content, Optional<Instant> saved, Optional<Examination> examination, Notes notes) {
    List<Remark> remarks = examination.map(Examination::remarks).orElse(List.of());
    Kind kind = content.proposal().kind();
    Verdict verdict = verdict(kind, remarks);
    boolean isJudged = examination.isPresent() && QueueRow.isJudged(kind);
    return new SideView(
        saved.isPresent(),
        Times.of(saved.orElse(Instant.EPOCH)),
        isJudged ? verdict.label() : "",
        isJudged ? headline(content, verdict) : "",
        ReasonView.all(kind, remarks, content.proposal().subject(), lexicon, Map.of()),
        notes.missing(),
        new Values(lexicon)
            .fitted(
                examination.map(Examination::serves).orElse(List.of()).stream()
                    .filter(each -> !each.equals(content.wantedFor()))
                    .toList(),
                verdict),
        notes.others());
  }

  static Verdict verdict(Kind kind, List<Remark> remarks) {
    return remarks.stream()
        .map(remark -> ReasonView.verdict(kind, remark))
        .reduce(Verdict.PASS, Verdict::and);
  }

  String headline(Content content, Verdict verdict) {
    String target = target(content);
    if (target.isEmpty()) {
      return switch (verdict) {
        case PASS -> "No problems found";
        case LOOK -> "A person should look at this";
        case FAIL -> "It can be in the bank, but in no list by the usual rules";
      };
    }
    String words = new Values(lexicon).words(target);
    return switch (verdict) {
      case PASS -> "It passes for " + words;
      case LOOK -> "For %s a person should look at this".formatted(words);
      case FAIL -> "It doesn’t pass for " + words;
    };
  }

  /** A sentence is for the value that it names. */
  private static String target(Content content) {
    return content.proposal() instanceof NewSentence sentence
        ? sentence.phonogram() + " " + sentence.value()
        : content.wantedFor();
  }
}
