package org.hedgerow.web.people;

import java.util.List;
import org.hedgerow.web.people.AuditFilter.Option;

/**
 * What was done, the newest first.
 *
 * @param older where the list goes on; empty at its end
 * @param table address of the same as a table
 */
record AuditPage(
    AuditFilter filter,
    List<Option> actions,
    List<ShownRecord> records,
    String older,
    String table) {}
