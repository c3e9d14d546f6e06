package org.hedgerow.web.people;

import java.util.List;

/**
 * All accounts and open links.
 *
 * @param shown a link that has just been made
 */
record PeoplePage(Form form, Shown shown, List<Row> accounts, List<Row> links) {}
