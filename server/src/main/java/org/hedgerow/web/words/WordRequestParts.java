package org.hedgerow.web.words;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Parameters;

/** Reads the parts of one question. */
final class WordRequestParts {

  private final Lexicon lexicon;
  private final Resolved resolved = new Resolved();
  private final StandardReader standards;
  private final FilterReader filters;

  /**
   * @param lexicon the edition that the parameters choose
   */
  WordRequestParts(Lexicon lexicon, Parameters parameters) {
    this.lexicon = lexicon;
    parameters
        .text(EditionChoice.PARAMETER)
        .ifPresent(edition -> resolved.note(EditionChoice.PARAMETER, edition));
    this.standards = new StandardReader(lexicon, parameters, resolved);
    this.filters = new FilterReader(parameters, resolved);
  }

  /** The question for the start of the list; worth nothing if there are faults. */
  WordRequest request() {
    Optional<Correspondence> phonogram = standards.phonogram();
    List<AccentCatalogue> accents = standards.accents();
    Optional<Sound> sound = standards.sound(accents);
    WordQuery query =
        filters.query(
            accents.stream().map(each -> each.accent().tag()).toList(),
            standards.standard(phonogram, sound, accents),
            standards.differsIn(accents));
    int limit = filters.limit();
    return new WordRequest(
        lexicon.edition(), phonogram, sound, query, limit, 0, resolved.inOrder());
  }
}
