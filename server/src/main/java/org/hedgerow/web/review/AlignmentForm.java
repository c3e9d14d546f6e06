package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.review.ProposedPronunciation;
import org.hedgerow.review.Realignment;

/** The form in which letters and sounds are put right. */
final class AlignmentForm extends KindForm<Realignment> {
  AlignmentForm() {
    super(
        Realignment.class,
        "Correct letters and sounds",
        "For a word whose letters the bank matches to the wrong sounds.");
  }

  @Override
  boolean asksForValue() {
    return true;
  }

  @Override
  Realignment read(Fields fields, Lexicon lexicon) {
    String spelling = spelling(fields);
    return new Realignment(spelling, aligned(spelling, fields, lexicon));
  }

  /** What is put right is a pronunciation of the bank's, and always by hand. */
  private static ProposedPronunciation aligned(String spelling, Fields fields, Lexicon lexicon) {
    ProposedPronunciation wanted =
        another(fields)
            .orElseGet(() -> new ProposedPronunciationReader(lexicon, fields, spelling).read(0));
    if (!wanted.spans().isEmpty()) {
      return wanted;
    }
    ComputedAlignments alignments = new ComputedAlignments(lexicon);
    Optional<List<Sound>> sounds = alignments.sounds(wanted.accent(), wanted.sounds());
    return sounds.isEmpty()
        ? wanted
        : new ProposedPronunciation(
            wanted.accent(),
            wanted.sounds(),
            alignments.present(spelling, wanted.accent(), sounds.get()));
  }

  /** The pronunciation that was just chosen instead of the one in the form. */
  private static Optional<ProposedPronunciation> another(Fields fields) {
    String[] said = fields.text("said").split(" ", 2);
    boolean another = said.length == 2 && !fields.text("said").equals(fields.text("said-before"));
    return another
        ? Optional.of(new ProposedPronunciation(said[0], said[1], List.of()))
        : Optional.empty();
  }

  @Override
  ProposalFields show(Realignment aligned, Lexicon lexicon, FieldErrors errors) {
    PronunciationFields block =
        new PronunciationFieldsMaker(lexicon, aligned.spelling(), errors).one(aligned.saying());
    return ProposalFields.ofWord(aligned.spelling(), lexicon)
        .with(SpokenFields.ofAlignment(block, choices(aligned, lexicon)));
  }

  /** As the value of a choice, the accent's tag and the sounds. */
  private static List<Option> choices(Realignment aligned, Lexicon lexicon) {
    ProposedPronunciation chosen = aligned.saying();
    Set<Option> choices = new LinkedHashSet<>();
    lexicon.word(aligned.spelling()).stream()
        .flatMap(word -> word.pronunciations().stream())
        .map(each -> choice(each, chosen.accent() + " " + chosen.sounds(), lexicon))
        .forEach(choices::add);
    return new ArrayList<>(choices);
  }

  private static Option choice(Pronunciation spoken, String chosen, Lexicon lexicon) {
    String accent = lexicon.accent(spoken.accent()).orElseThrow().accent().name();
    String sounds = Sound.spaced(spoken.sounds());
    return Option.of(spoken.accent() + " " + sounds, "%s: /%s/".formatted(accent, sounds), chosen);
  }

  @Override
  List<Fact> describe(Realignment aligned, Lexicon lexicon) {
    return List.of();
  }
}
