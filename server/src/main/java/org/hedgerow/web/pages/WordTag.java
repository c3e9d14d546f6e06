package org.hedgerow.web.pages;

import java.util.List;

/**
 * A word in the list.
 *
 * @param address the same page with this word looked at closely
 * @param current whether it is looked at now
 */
record WordTag(String spelling, List<Piece> pieces, String address, boolean current) {}
