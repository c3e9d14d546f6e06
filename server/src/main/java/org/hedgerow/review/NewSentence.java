package org.hedgerow.review;

import com.fasterxml.jackson.annotation.JsonAlias;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Correspondence;

/**
 * A sentence for a phonogram value.
 *
 * @param phonogram the grapheme, as in {@code oa}
 * @param value its number
 * @param accents in which it is right, at least one
 */
public record NewSentence(
    String text, String phonogram, int value, @JsonAlias("accent") List<String> accents)
    implements Proposal {
  static final int MAX_LENGTH = 300;

  public NewSentence {
    text = Given.text(text);
    phonogram = Given.text(phonogram);
    accents = Given.list(accents);
  }

  @Override
  public ContributionKind kind() {
    return ContributionKind.SENTENCE;
  }

  @Override
  public String subject() {
    return text;
  }

  @Override
  public String subjectField() {
    return "text";
  }

  @Override
  public boolean concernsSentence() {
    return true;
  }

  @Override
  public List<FieldError> errors(BankSnapshot snapshot) {
    List<FieldError> errors = new ArrayList<>();
    if (text.isEmpty()) {
      errors.add(new FieldError("text", "Write the sentence."));
    } else if (text.length() > MAX_LENGTH) {
      errors.add(
          new FieldError("text", "A sentence has at most %d characters.".formatted(MAX_LENGTH)));
    } else if (snapshot.sentences().apply(text).isPresent()) {
      errors.add(new FieldError("text", "The bank has this sentence already."));
    }
    if (target(snapshot.lexicon()).isEmpty()) {
      errors.add(
          new FieldError("phonogram", "Say for which value of which phonogram it is, as in oa 1."));
    }
    if (accents.isEmpty()) {
      errors.add(new FieldError("accents", "Say in which accents it is right."));
    }
    for (String accent : accents) {
      if (snapshot.lexicon().accent(accent).isEmpty()) {
        errors.add(Accented.unknown("accents", accent, snapshot.lexicon()));
      }
    }
    return errors;
  }

  private Optional<Correspondence> target(Lexicon lexicon) {
    return lexicon.catalogue().values(phonogram).stream()
        .filter(each -> each.value().orElse(0) == value)
        .findFirst();
  }

  @Override
  public Change change(BankSnapshot snapshot, String source) {
    return Change.of(new Sentence(text, target(snapshot.lexicon()).orElseThrow(), accents));
  }

  @Override
  public String summary() {
    return "New sentence for %s %d.".formatted(phonogram, value);
  }
}
