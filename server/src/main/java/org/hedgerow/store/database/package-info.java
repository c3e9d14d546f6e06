/**
 * What every room of the store needs of PostgreSQL: connections, transactions, migrations, outages.
 */
@NullMarked
package org.hedgerow.store.database;

import org.jspecify.annotations.NullMarked;
