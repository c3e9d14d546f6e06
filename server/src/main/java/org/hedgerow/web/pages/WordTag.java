package org.hedgerow.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * A word in the list.
 *
 * @param address the same page with this word looked at closely
 * @param picture the address of its picture, if it has one
 * @param current whether it is looked at now
 */
record WordTag(
    String spelling,
    List<Piece> pieces,
    String address,
    Optional<String> picture,
    boolean current) {}
