package org.hedgerow.web.review;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Sound;
import org.hedgerow.review.Content;
import org.hedgerow.review.ContributionKind;
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

/** Reads what a form says. */
final class ContentFormReader {
  private final Lexicon lexicon;
  private final Fields fields;

  ContentFormReader(Lexicon lexicon, Fields fields) {
    this.lexicon = lexicon;
    this.fields = fields;
  }

  Content read(ContributionKind kind) {
    return new Content(proposal(kind), fields.text("wantedFor"), fields.text("note"));
  }

  private Proposal proposal(ContributionKind kind) {
    String spelling = fields.text("spelling").toLowerCase(Locale.ROOT);
    return switch (kind) {
      case WORD -> new NewWord(spelling, sayings(spelling), labels());
      case PRONUNCIATION ->
          new NewPronunciation(spelling, saying(spelling), fields.text("instead").equals("yes"));
      case ALIGNMENT -> new Realignment(spelling, aligned(spelling));
      case TAGS -> new Retag(spelling, labels());
      case PICTURE ->
          new NewPicture(
              spelling,
              fields.text("upload"),
              fields.text("title"),
              fields.text("author"),
              fields.text("licence"),
              fields.text("source"));
      case SENTENCE -> sentence();
      case WITHDRAWAL -> new Withdrawal(spelling, fields.text("sentence"), fields.text("reason"));
    };
  }

  private List<ProposedPronunciation> sayings(String spelling) {
    ProposedPronunciationReader reader = new ProposedPronunciationReader(lexicon, fields, spelling);
    List<ProposedPronunciation> all = reader.all();
    return all.isEmpty() ? List.of(reader.read(0)) : all;
  }

  private ProposedPronunciation saying(String spelling) {
    return new ProposedPronunciationReader(lexicon, fields, spelling).read(0);
  }

  /** What is put right is a pronunciation of the bank's, and always by hand. */
  private ProposedPronunciation aligned(String spelling) {
    ProposedPronunciation chosen = saying(spelling);
    String[] said = fields.text("said").split(" ", 2);
    boolean another = said.length == 2 && !fields.text("said").equals(fields.text("said-before"));
    ProposedPronunciation wanted =
        another ? new ProposedPronunciation(said[0], said[1], List.of()) : chosen;
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

  private WordLabels labels() {
    return new WordLabels(
        level("commonness"),
        level("picturable"),
        fields.all("partsOfSpeech").stream().filter(part -> !part.isEmpty()).toList(),
        List.of(),
        suits());
  }

  private Optional<Integer> level(String name) {
    int level = Fields.number(fields.text(name), -1);
    return level < 0 ? Optional.empty() : Optional.of(level);
  }

  /** A reason means no; an empty one means yes. */
  private Optional<String> suits() {
    return switch (fields.text("suits")) {
      case "yes" -> Optional.of("");
      case "no" ->
          Optional.of(fields.text("unfit").isEmpty() ? LabelsView.NO_REASON : fields.text("unfit"));
      default -> Optional.empty();
    };
  }

  private NewSentence sentence() {
    String[] value = fields.text("value").split(" ", 2);
    return new NewSentence(
        fields.text("text"),
        value[0],
        value.length == 2 ? Fields.number(value[1], 0) : 0,
        fields.all("accents"));
  }
}
