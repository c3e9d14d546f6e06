/**
 * Persistence in PostgreSQL, a room a subject. Here: the database, opened and migrated, and what
 * every operation writes.
 */
@NullMarked
package org.hedgerow.store;

import org.jspecify.annotations.NullMarked;
