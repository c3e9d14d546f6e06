package org.hedgerow.web.review;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.Content;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.Proposal;

/**
 * A kind of contribution on the pages: what it is called, how its form is read and filled in, and
 * what is said of a proposal.
 */
abstract class KindForm<P extends Proposal> {
  private final Class<P> type;
  private final String title;
  private final String help;

  /**
   * @param help what one does with it, in a sentence
   */
  KindForm(Class<P> type, String title, String help) {
    this.type = type;
    this.title = title;
    this.help = help;
  }

  static KindForm<?> of(ContributionKind kind) {
    return switch (kind) {
      case WORD -> new WordForm();
      case PRONUNCIATION -> new PronunciationForm();
      case ALIGNMENT -> new AlignmentForm();
      case TAGS -> new TagsForm();
      case PICTURE -> new PictureForm();
      case SENTENCE -> new SentenceForm();
      case WITHDRAWAL -> new WithdrawalForm();
    };
  }

  /** What a form says, after whichever of its small buttons was pressed. */
  static Content content(ContributionKind kind, Fields fields, Lexicon lexicon) {
    return new Content(
        of(kind).pressed(fields, lexicon), fields.text("wantedFor"), fields.text("note"));
  }

  private P pressed(Fields fields, Lexicon lexicon) {
    return after(fields.text("do"), read(fields, lexicon), lexicon);
  }

  static ProposalFields fields(Proposal proposal, Lexicon lexicon, FieldErrors errors) {
    return of(proposal.kind()).fieldsOf(proposal, lexicon, errors);
  }

  private ProposalFields fieldsOf(Proposal proposal, Lexicon lexicon, FieldErrors errors) {
    return show(type.cast(proposal), lexicon, errors);
  }

  /** Everything but letters and sounds; a text that is empty says nothing. */
  static List<Fact> facts(Proposal proposal, Lexicon lexicon) {
    return of(proposal.kind()).factsOf(proposal, lexicon);
  }

  private List<Fact> factsOf(Proposal proposal, Lexicon lexicon) {
    return describe(type.cast(proposal), lexicon);
  }

  /** The word that it is about; empty if it is about a sentence. */
  static String spelling(Proposal proposal) {
    return proposal.concernsSentence() ? "" : proposal.subject();
  }

  /** The picture that was sent for it. */
  static Optional<String> upload(Proposal proposal) {
    return of(proposal.kind()).uploadOf(proposal).filter(id -> !id.isEmpty());
  }

  private Optional<String> uploadOf(Proposal proposal) {
    return picture(type.cast(proposal));
  }

  /** The phonogram value that it is for, as in {@code oa 1}; may be empty. */
  static String target(Content content) {
    return of(content.proposal().kind()).targetOf(content);
  }

  private String targetOf(Content content) {
    return target(type.cast(content.proposal()), content.wantedFor());
  }

  final String title() {
    return title;
  }

  final String help() {
    return help;
  }

  /**
   * Whether it can be proposed for a word.
   *
   * @param known whether the bank holds the word
   */
  boolean isOfferedFor(boolean known) {
    return known;
  }

  /** Whether a contributor may say for which phonogram value it is meant. */
  boolean asksForValue() {
    return false;
  }

  abstract P read(Fields fields, Lexicon lexicon);

  /** What a small button of the form makes of a proposal. */
  P after(String button, P proposal, Lexicon lexicon) {
    return proposal;
  }

  abstract ProposalFields show(P proposal, Lexicon lexicon, FieldErrors errors);

  abstract List<Fact> describe(P proposal, Lexicon lexicon);

  Optional<String> picture(P proposal) {
    return Optional.empty();
  }

  String target(P proposal, String wantedFor) {
    return wantedFor;
  }

  static String spelling(Fields fields) {
    return fields.text("spelling").toLowerCase(Locale.ROOT);
  }
}
