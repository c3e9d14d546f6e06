package org.hedgerow.web.http;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Accent;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.Parameters;

/** The parameter {@code accent} of reads that have no other. */
public final class AccentParameter {

  private static final String NAME = "accent";

  public static final List<String> NAMES = List.of(NAME);

  private AccentParameter() {}

  /** The accent asked for, or the bank's first. */
  public static Accent one(Lexicon lexicon, Parameters parameters) {
    return new AccentReader(lexicon, parameters.errors()).one(NAME, parameters.text(NAME)).accent();
  }

  /** The accents asked for, or the bank's first. */
  public static List<String> tags(Lexicon lexicon, Parameters parameters) {
    return new AccentReader(lexicon, parameters.errors()).tags(NAME, parameters.text(NAME));
  }
}
