package org.hedgerow.web.page;

import io.javalin.http.Context;
import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.Parameters;

/** Reads the parameters of pages that are about one accent or several. */
public final class AccentQuestion {

  private AccentQuestion() {}

  /**
   * @param others names of the page's other parameters
   * @throws org.hedgerow.web.query.InvalidQueryException if a parameter is wrong
   */
  public static Parameters read(Context context, List<String> others) {
    Parameters parameters = Parameters.ofPage(context.queryParamMap(), others);
    parameters.errors().throwIfAny();
    return parameters;
  }

  /**
   * @throws org.hedgerow.web.query.InvalidQueryException if there is no such accent
   */
  public static ChosenAccents accents(Lexicon lexicon, Parameters parameters, String name) {
    List<String> tags =
        new AccentReader(lexicon, parameters.errors()).tags(name, parameters.text(name));
    parameters.errors().throwIfAny();
    return ChosenAccents.of(lexicon, tags);
  }
}
