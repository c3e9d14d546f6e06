package org.hedgerow.web.editions;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.view.EditionLine;

/**
 * The page of what one edition changed.
 *
 * @param material what else it changed; only with its first words
 * @param more the address of the words after those shown; empty at the end
 */
record EditionPage(
    EditionLine edition,
    int newest,
    List<WordDifference> words,
    List<MaterialDifference> material,
    Optional<String> more) {}
