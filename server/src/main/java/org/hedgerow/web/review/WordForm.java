package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.NewWord;
import org.hedgerow.review.ProposedPronunciation;

/** The form of a new word. */
final class WordForm extends KindForm<NewWord> {
  private static final String ADD = "add";
  private static final String REMOVE = "remove-";

  WordForm() {
    super(
        NewWord.class,
        "A new word",
        "Write the word; the bank proposes how it is said and which letters spell what.");
  }

  @Override
  boolean isOfferedFor(boolean known) {
    return !known;
  }

  @Override
  boolean asksForValue() {
    return true;
  }

  @Override
  NewWord read(Fields fields, Lexicon lexicon) {
    String spelling = spelling(fields);
    ProposedPronunciationReader reader = new ProposedPronunciationReader(lexicon, fields, spelling);
    List<ProposedPronunciation> all = reader.all();
    return new NewWord(
        spelling, all.isEmpty() ? List.of(reader.read(0)) : all, LabelsView.read(fields));
  }

  /** {@code add} makes another block of sounds, {@code remove-1} takes the second away. */
  @Override
  NewWord after(String button, NewWord word, Lexicon lexicon) {
    List<ProposedPronunciation> changed = new ArrayList<>();
    for (ProposedPronunciation each : word.pronunciations()) {
      changed.add(SoundButtons.after(button, each, changed.size()));
    }
    if (button.equals(ADD) && changed.size() < ProposedPronunciationReader.MAX) {
      changed.add(another(word, lexicon));
    }
    if (button.startsWith(REMOVE) && changed.size() > 1) {
      int block = Fields.number(button.substring(REMOVE.length()), changed.size());
      if (block < changed.size()) {
        changed.remove(block);
      }
    }
    return new NewWord(word.spelling(), changed, word.labels());
  }

  private static ProposedPronunciation another(NewWord word, Lexicon lexicon) {
    Proposals proposals = new Proposals(lexicon);
    String accent =
        proposals.accentBeside(
            word.pronunciations().stream().map(ProposedPronunciation::accent).toList());
    return new ProposedPronunciation(accent, proposals.sounds(word.spelling(), accent), List.of());
  }

  @Override
  ProposalFields show(NewWord word, Lexicon lexicon, FieldErrors errors) {
    List<PronunciationFields> blocks =
        new PronunciationFieldsMaker(lexicon, word.spelling(), errors).all(word.pronunciations());
    return ProposalFields.ofWord(word.spelling(), lexicon)
        .with(SpokenFields.ofNewWord(blocks))
        .with(LabelsView.of(word.labels(), Optional.empty()));
  }

  @Override
  List<Fact> describe(NewWord word, Lexicon lexicon) {
    return LabelsView.facts(word.labels());
  }
}
