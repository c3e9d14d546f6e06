package org.hedgerow.web.pages;

import java.util.List;

/**
 * A word that stands in the list of one accent and not in that of the other.
 *
 * @param reasons why not in the other, in sentences
 */
record Difference(List<Piece> word, String address, String reasons) {}
