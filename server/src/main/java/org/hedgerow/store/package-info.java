/**
 * Persistence in PostgreSQL: the embedded server or one given by its address, one connection pool,
 * and migrations at start.
 */
@NullMarked
package org.hedgerow.store;

import org.jspecify.annotations.NullMarked;
