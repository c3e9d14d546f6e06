package org.hedgerow.review;

import com.fasterxml.jackson.annotation.JsonAlias;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Sentence;
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
  static final int LONGEST = 300;

  public NewSentence {
    text = Given.text(text);
    phonogram = Given.text(phonogram);
    accents = Given.list(accents);
  }

  @Override
  public Kind kind() {
    return Kind.SENTENCE;
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
  public List<FieldFault> faults(Basis basis) {
    List<FieldFault> faults = new ArrayList<>();
    if (text.isEmpty()) {
      faults.add(new FieldFault("text", "Write the sentence."));
    } else if (text.length() > LONGEST) {
      faults.add(
          new FieldFault("text", "A sentence has at most %d characters.".formatted(LONGEST)));
    } else if (basis.sentences().apply(text).isPresent()) {
      faults.add(new FieldFault("text", "The bank has this sentence already."));
    }
    if (target(basis.lexicon()).isEmpty()) {
      faults.add(
          new FieldFault("phonogram", "Say for which value of which phonogram it is, as in oa 1."));
    }
    if (accents.isEmpty()) {
      faults.add(new FieldFault("accents", "Say in which accents it is right."));
    }
    for (String accent : accents) {
      if (basis.lexicon().accent(accent).isEmpty()) {
        faults.add(Accented.unknown("accents", accent, basis.lexicon()));
      }
    }
    return faults;
  }

  private Optional<Correspondence> target(Lexicon lexicon) {
    return lexicon.catalogue().values(phonogram).stream()
        .filter(each -> each.value().orElse(0) == value)
        .findFirst();
  }

  @Override
  public Change change(Basis basis, String source) {
    return Change.of(new Sentence(text, target(basis.lexicon()).orElseThrow(), accents));
  }

  @Override
  public String summary() {
    return "New sentence for %s %d.".formatted(phonogram, value);
  }
}
