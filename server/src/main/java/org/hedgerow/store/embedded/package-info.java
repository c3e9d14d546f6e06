/** The PostgreSQL that the server carries: its files, its start, its end and its supervision. */
@NullMarked
package org.hedgerow.store.embedded;

import org.jspecify.annotations.NullMarked;
