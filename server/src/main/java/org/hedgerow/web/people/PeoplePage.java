package org.hedgerow.web.people;

import java.util.List;

/**
 * All accounts and open links.
 *
 * @param shown a link that has just been made
 */
record PeoplePage(Form form, RevealedSecret shown, List<ListRow> accounts, List<ListRow> links) {}
