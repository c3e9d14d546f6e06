package org.hedgerow.web.review;

import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;

/**
 * A proposal, as fields of a form; each kind has some of them.
 *
 * @param spelling of the word that it is about; empty if it is about a sentence, or not yet written
 * @param ofWord whether it is about a word
 * @param known whether the bank holds the word
 */
record ProposalFields(
    String spelling,
    boolean ofWord,
    boolean known,
    Optional<SpokenFields> spoken,
    Optional<LabelsView> labels,
    Optional<PictureFields> picture,
    Optional<SentenceView> sentence,
    Optional<WithdrawalFields> withdrawal) {

  static ProposalFields ofWord(String spelling, Lexicon lexicon) {
    return new ProposalFields(
        spelling,
        true,
        lexicon.word(spelling).isPresent(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static ProposalFields ofSentence() {
    return new ProposalFields(
        "",
        false,
        false,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  ProposalFields with(SpokenFields its) {
    return new ProposalFields(
        spelling, ofWord, known, Optional.of(its), labels, picture, sentence, withdrawal);
  }

  ProposalFields with(LabelsView its) {
    return new ProposalFields(
        spelling, ofWord, known, spoken, Optional.of(its), picture, sentence, withdrawal);
  }

  ProposalFields with(PictureFields its) {
    return new ProposalFields(
        spelling, ofWord, known, spoken, labels, Optional.of(its), sentence, withdrawal);
  }

  ProposalFields with(SentenceView its) {
    return new ProposalFields(
        spelling, ofWord, known, spoken, labels, picture, Optional.of(its), withdrawal);
  }

  ProposalFields with(WithdrawalFields its) {
    return new ProposalFields(
        spelling, ofWord, known, spoken, labels, picture, sentence, Optional.of(its));
  }
}
