package org.hedgerow.seedlexicon;

import java.util.List;

/**
 * A way in which a verb is used.
 *
 * @param past empty where the inflected forms tell it
 * @param subject classes of nouns, and nouns with = before them: who does it
 * @param object the same: what it is done to; none where it is done to nothing
 * @param smaller whether the object must be smaller than who does it
 * @param where prepositions, each alone for any noun that it makes a place of, or with a colon and
 *     the nouns and classes that fit
 * @param whereNeeded whether the verb needs a place
 * @param rest fixed endings
 * @param restNeeded whether the verb needs one of them
 * @param forms past, present, ing, can, command, want
 */
public record VerbRow(
    String verb,
    String past,
    List<String> subject,
    List<String> object,
    boolean smaller,
    List<String> where,
    boolean whereNeeded,
    List<String> rest,
    boolean restNeeded,
    List<String> forms) {

  private static final String NEEDED = "!";
  private static final String SMALLER = "<";

  public VerbRow {
    subject = List.copyOf(subject);
    object = List.copyOf(object);
    where = List.copyOf(where);
    rest = List.copyOf(rest);
    forms = List.copyOf(forms);
  }

  static VerbRow from(TsvRow row) {
    row.required("subject");
    row.required("forms");
    return new VerbRow(
        row.required("verb"),
        row.text("past"),
        row.terms("subject"),
        row.terms("object"),
        row.text("size").equals(SMALLER),
        row.parts("where", NEEDED, " "),
        row.text("where").startsWith(NEEDED),
        row.parts("rest", NEEDED, "; "),
        row.text("rest").startsWith(NEEDED),
        row.terms("forms"));
  }
}
