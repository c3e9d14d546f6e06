package org.hedgerow.web.http;

import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.query.Parameters;

/** One kind of question that an edition of the bank answers. */
public interface Read {

  /** The names of its own query parameters. */
  List<String> parameters();

  /** The formats of its answers, the usual one first. */
  default List<Format> formats() {
    return List.of(Format.JSON);
  }

  /**
   * Understands what is asked.
   *
   * @param path the parameters in its path, by their names
   * @param parameters whose errors it adds to
   * @throws org.hedgerow.web.problems.ProblemException if it can't be answered; may be left to the
   *     caller as long as nothing depends on it
   */
  Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters);
}
