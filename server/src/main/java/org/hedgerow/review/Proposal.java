package org.hedgerow.review;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.List;
import org.hedgerow.operations.FieldError;

/**
 * A change of the bank that somebody wants. In a draft any part may be missing; {@link #errors}
 * says what. In JSON, {@code kind} tells the kinds apart.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
  @JsonSubTypes.Type(value = NewWord.class, name = "word"),
  @JsonSubTypes.Type(value = NewPronunciation.class, name = "pronunciation"),
  @JsonSubTypes.Type(value = Realignment.class, name = "alignment"),
  @JsonSubTypes.Type(value = Retag.class, name = "tags"),
  @JsonSubTypes.Type(value = NewPicture.class, name = "picture"),
  @JsonSubTypes.Type(value = NewSentence.class, name = "sentence"),
  @JsonSubTypes.Type(value = Withdrawal.class, name = "withdrawal")
})
public sealed interface Proposal
    permits NewWord, NewPronunciation, Realignment, Retag, NewPicture, NewSentence, Withdrawal {

  ContributionKind kind();

  /** The word or the sentence that it is about, by which others about the same are found. */
  String subject();

  /** The field that has the subject, as errors name it. */
  default String subjectField() {
    return "spelling";
  }

  /** Whether it is about a sentence; otherwise it is about a word. */
  default boolean concernsSentence() {
    return false;
  }

  /** The ways to say a word that it proposes or puts right. */
  default List<ProposedPronunciation> pronunciations() {
    return List.of();
  }

  /** What is missing or wrong, so that it can't be submitted or approved; empty if nothing. */
  List<FieldError> errors(BankSnapshot snapshot);

  /**
   * What it makes of the bank.
   *
   * @param snapshot on which it has no errors
   * @param source how the entry says where it comes from, as in {@code contribution 7}
   */
  Change change(BankSnapshot snapshot, String source);

  /** In one line, for people. */
  String summary();
}
