/** Editions in the database: written, read, published and shown by every server. */
@NullMarked
package org.hedgerow.store.editions;

import org.jspecify.annotations.NullMarked;
