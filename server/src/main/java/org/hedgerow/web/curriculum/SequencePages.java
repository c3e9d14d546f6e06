package org.hedgerow.web.curriculum;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.StepFigures;
import org.hedgerow.web.page.AccentQuestion;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.OldEdition;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.page.ShownEdition;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Parameters;

/** The sequences, step by step, at {@code /sequences}. */
public final class SequencePages {

  private static final String SEQUENCE = "sequence";

  private final Editions editions;
  private final PageWriter writer;

  public SequencePages(Editions editions, PageWriter writer) {
    this.editions = editions;
    this.writer = writer;
  }

  public void show(Context context) {
    Parameters parameters =
        AccentQuestion.read(
            context, List.of(ChosenAccents.PARAMETER, SEQUENCE, EditionChoice.PARAMETER));
    Lexicon lexicon = edition(parameters);
    ChosenAccents accents = AccentQuestion.accents(lexicon, parameters, ChosenAccents.PARAMETER);
    List<Sequence> all = lexicon.plans().sequences(accents.first().tag());
    String name = parameters.text(SEQUENCE).orElse(all.get(all.size() - 1).name());
    Sequence chosen =
        all.stream()
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseGet(() -> unknown(parameters, all));
    List<StepFigures> figures = StepFigures.of(lexicon, accents.first().tag(), chosen);
    String now =
        "/sequences?sequence="
            + chosen.name()
            + (accents.parameter().isEmpty() ? "" : "&accent=" + accents.parameter());
    SequencePage page =
        SequencePage.of(all, chosen, figures, accents, shown(parameters, lexicon, now));
    writer.write(context, "curriculum/sequences.jte", Map.of("page", page));
  }

  private Lexicon edition(Parameters parameters) {
    Lexicon chosen = EditionChoice.of(editions, parameters);
    parameters.errors().throwIfAny();
    return chosen;
  }

  /**
   * @param now the address of the page in the newest edition
   */
  private ShownEdition shown(Parameters parameters, Lexicon lexicon, String now) {
    return new ShownEdition(
        parameters.text(EditionChoice.PARAMETER), OldEdition.of(lexicon, editions.newest(), now));
  }

  private static Sequence unknown(Parameters parameters, List<Sequence> all) {
    String names = String.join(", ", all.stream().map(Sequence::name).toList());
    parameters
        .errors()
        .invalid(SEQUENCE, "There is no such sequence. There are %s.".formatted(names));
    parameters.errors().throwIfAny();
    return all.get(0);
  }
}
