package org.hedgerow.web.review;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.Proposal;
import org.hedgerow.review.ProposedPronunciation;

/** Says in words what somebody proposes. */
record Describer(Lexicon lexicon) {

  ProposalView view(Contribution contribution) {
    Proposal proposal = contribution.proposal();
    String spelling = KindForm.spelling(proposal);
    return new ProposalView(
        KindForm.of(proposal.kind()).title(),
        proposal.subject(),
        !spelling.isEmpty(),
        proposal.pronunciations().stream()
            .map(new ShownPronunciations(lexicon, spelling)::of)
            .toList(),
        facts(contribution.content()),
        KindForm.upload(proposal).isEmpty()
            ? ""
            : "/contributions/%d/picture".formatted(contribution.id()),
        contribution.content().note());
  }

  /** Everything but letters and sounds, and the note. */
  List<Fact> facts(Content content) {
    List<Fact> facts = new ArrayList<>(KindForm.facts(content.proposal(), lexicon));
    if (!content.wantedFor().isEmpty()) {
      facts.add(new Fact("Wanted for", new ValueOptions(lexicon).words(content.wantedFor())));
    }
    facts.removeIf(fact -> fact.text().isEmpty());
    return facts;
  }

  static String accentName(String tag, Lexicon lexicon) {
    return Optional.of(tag).flatMap(lexicon::accent).map(each -> each.accent().name()).orElse(tag);
  }

  /** All of it, each thing by its name, so that two can be compared. */
  List<Fact> everything(Content content) {
    List<Fact> all = new ArrayList<>();
    all.add(new Fact("Word or sentence", content.proposal().subject()));
    for (ProposedPronunciation saying : content.proposal().pronunciations()) {
      all.add(
          new Fact(
              "Said, no. %d".formatted(all.size()),
              accentName(saying.accent(), lexicon) + spoken(saying)));
    }
    all.addAll(facts(content));
    all.add(new Fact("Note", content.note()));
    all.removeIf(fact -> fact.text().isEmpty());
    return all;
  }

  private String spoken(ProposedPronunciation saying) {
    String byHand =
        saying.spans().stream()
            .map(piece -> piece.letters().stream().map(at -> at + 1).toList() + piece.sound())
            .collect(joining(" "));
    return ": /" + saying.sounds() + "/" + (byHand.isEmpty() ? "" : ", by hand " + byHand);
  }
}
