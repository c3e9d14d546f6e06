package org.hedgerow.web.words;

import java.util.List;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.Field;

/**
 * The form that narrows or widens a list, and what is chosen in it.
 *
 * @param rarerFields choices that stand folded away, unless one of them is made
 * @param rime the word that all words must end like, or an empty text
 * @param hidden the parameters that the form has no field for and sends again
 * @param taught what stands in the field for the phonograms that are taught
 * @param taughtError what is wrong with that, or an empty text
 * @param cleared the address of the list with nothing chosen
 */
public record FilterForm(
    List<Field> fields,
    List<Field> rarerFields,
    String rime,
    List<Choice> hidden,
    String taught,
    String taughtError,
    List<Chip> chips,
    String cleared) {

  /** Whether something is chosen, or typed wrongly, that must be seen. */
  boolean isOpen() {
    return !chips.isEmpty() || !taughtError.isEmpty();
  }

  boolean hasRareChoice() {
    return !rime.isEmpty() || rarerFields.stream().anyMatch(Field::isChanged);
  }
}
