package org.hedgerow.web.people;

import java.util.List;

/**
 * One's own account.
 *
 * @param done what has just been done, or an empty text
 * @param shown a token that has just been made
 * @param roles that a token may have
 */
record OwnAccountPage(
    Form form,
    String name,
    String displayName,
    String role,
    String done,
    RevealedSecret shown,
    List<String> roles,
    List<ListRow> sessions,
    List<ListRow> tokens) {}
