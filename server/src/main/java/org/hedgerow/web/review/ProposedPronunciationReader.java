package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Sound;
import org.hedgerow.review.LetterGroup;
import org.hedgerow.review.ProposedPronunciation;

/** Reads how somebody says a word from the fields of a form, one block for each way. */
final class ProposedPronunciationReader {
  /** Blocks in a form. */
  static final int MAX = 12;

  private final Lexicon lexicon;
  private final Fields fields;
  private final String spelling;

  ProposedPronunciationReader(Lexicon lexicon, Fields fields, String spelling) {
    this.lexicon = lexicon;
    this.fields = fields;
    this.spelling = spelling;
  }

  List<ProposedPronunciation> all() {
    List<ProposedPronunciation> all = new ArrayList<>();
    for (int block = 0; block < MAX && fields.has("accent-" + block); block++) {
      all.add(read(block));
    }
    return all;
  }

  /** The block of a number; an untouched one where the form has none. */
  ProposedPronunciation read(int block) {
    String accent = given(fields.text("accent-" + block), new Proposals(lexicon).first());
    String sounds = sounds(block, accent);
    return new ProposedPronunciation(accent, sounds, spans(block, accent, sounds));
  }

  private static String given(String text, String otherwise) {
    return text.isEmpty() ? otherwise : text;
  }

  /** What nobody has touched is proposed anew, for the word may be another by now. */
  private String sounds(int block, String accent) {
    String typed = fields.text("sounds-" + block).replaceAll("\\s+", " ");
    return typed.isEmpty() || typed.equals(fields.text("proposed-" + block))
        ? new Proposals(lexicon).sounds(spelling, accent)
        : typed;
  }

  /** By hand, where the fields are about these letters and sounds and say other than we do. */
  private List<LetterGroup> spans(int block, String accent, String text) {
    Optional<List<Sound>> sounds = new ComputedAlignments(lexicon).sounds(accent, text);
    if (sounds.isEmpty() || !fields.text("base-" + block).equals(base(spelling, accent, text))) {
      return List.of();
    }
    List<LetterGroup> chosen =
        new LetterChoices(spelling, sounds.get(), lexicon.accent(accent).orElseThrow())
            .pieces(fields.all("letter-" + block));
    return chosen.equals(new ComputedAlignments(lexicon).proposed(spelling, accent, sounds.get()))
        ? List.of()
        : chosen;
  }

  /** What the choices of letters were made for. */
  static String base(String spelling, String accent, String sounds) {
    return spelling + " " + accent + " " + sounds;
  }
}
