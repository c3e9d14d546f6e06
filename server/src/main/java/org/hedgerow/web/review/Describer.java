package org.hedgerow.web.review;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.pictures.Licence;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.NewPicture;
import org.hedgerow.review.NewPronunciation;
import org.hedgerow.review.NewSentence;
import org.hedgerow.review.NewWord;
import org.hedgerow.review.Proposal;
import org.hedgerow.review.ProposedPronunciation;
import org.hedgerow.review.Realignment;
import org.hedgerow.review.Retag;
import org.hedgerow.review.Withdrawal;
import org.hedgerow.review.WordLabels;

/** Says in words what somebody proposes. */
record Describer(Lexicon lexicon) {

  ProposalView view(Contribution contribution) {
    Proposal proposal = contribution.proposal();
    String spelling = FormMaker.spelling(proposal);
    return new ProposalView(
        ReviewWording.of(proposal.kind()),
        proposal.subject(),
        !spelling.isEmpty(),
        sayings(proposal).stream().map(new ShownPronunciations(lexicon, spelling)::of).toList(),
        facts(contribution.content()),
        proposal instanceof NewPicture picture && !picture.upload().isEmpty()
            ? "/contributions/%d/picture".formatted(contribution.id())
            : "",
        contribution.content().note());
  }

  static List<ProposedPronunciation> sayings(Proposal proposal) {
    if (proposal instanceof NewWord word) {
      return word.pronunciations();
    }
    if (proposal instanceof NewPronunciation said) {
      return List.of(said.saying());
    }
    return proposal instanceof Realignment aligned ? List.of(aligned.saying()) : List.of();
  }

  /** Everything but letters and sounds, and the note. */
  List<Fact> facts(Content content) {
    List<Fact> facts = new ArrayList<>();
    add(facts, content.proposal());
    if (!content.wantedFor().isEmpty()) {
      facts.add(new Fact("Wanted for", new ValueOptions(lexicon).words(content.wantedFor())));
    }
    facts.removeIf(fact -> fact.text().isEmpty());
    return facts;
  }

  private void add(List<Fact> facts, Proposal proposal) {
    if (proposal instanceof NewWord word) {
      addLabels(facts, word.labels());
    } else if (proposal instanceof Retag retag) {
      addLabels(facts, retag.labels());
    } else if (proposal instanceof NewPronunciation said) {
      facts.add(
          new Fact(
              "Takes the place of",
              said.instead() ? "what the bank has in this accent" : "nothing: it is added"));
    } else if (proposal instanceof NewPicture picture) {
      addPicture(facts, picture);
    } else if (proposal instanceof NewSentence sentence) {
      addSentence(facts, sentence);
    } else if (proposal instanceof Withdrawal gone) {
      facts.add(new Fact("Why it should go", gone.reason()));
    }
  }

  private static void addLabels(List<Fact> facts, WordLabels labels) {
    labels
        .commonness()
        .ifPresent(level -> facts.add(new Fact("How common", ReviewWording.commonness(level))));
    labels
        .picturable()
        .ifPresent(
            level -> facts.add(new Fact("Can it be drawn", ReviewWording.picturable(level))));
    facts.add(
        new Fact(
            "What it does in a sentence",
            labels.partsOfSpeech().stream()
                .map(ReviewWording::partOfSpeech)
                .collect(joining("; "))));
    labels
        .notForChildren()
        .ifPresent(
            why ->
                facts.add(
                    new Fact(
                        "For small children", why.isEmpty() ? "Yes" : "No: %s".formatted(why))));
  }

  private static void addPicture(List<Fact> facts, NewPicture picture) {
    facts.add(new Fact("It shows", picture.title()));
    facts.add(new Fact("Made by", picture.author()));
    facts.add(
        new Fact(
            "Licence",
            Licence.of(picture.licence()).map(Licence::label).orElse(picture.licence())));
    facts.add(new Fact("From", picture.source()));
  }

  private void addSentence(List<Fact> facts, NewSentence sentence) {
    facts.add(
        new Fact(
            "For",
            sentence.phonogram().isEmpty()
                ? ""
                : new ValueOptions(lexicon).words(sentence.phonogram() + " " + sentence.value())));
    facts.add(
        new Fact(
            "Right in", sentence.accents().stream().map(this::accentName).collect(joining(", "))));
  }

  private String accentName(String tag) {
    return Optional.of(tag).flatMap(lexicon::accent).map(each -> each.accent().name()).orElse(tag);
  }

  /** All of it, each thing by its name, so that two can be compared. */
  List<Fact> everything(Content content) {
    List<Fact> all = new ArrayList<>();
    all.add(new Fact("Word or sentence", content.proposal().subject()));
    for (ProposedPronunciation saying : sayings(content.proposal())) {
      all.add(
          new Fact(
              "Said, no. %d".formatted(all.size()), accentName(saying.accent()) + spoken(saying)));
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
