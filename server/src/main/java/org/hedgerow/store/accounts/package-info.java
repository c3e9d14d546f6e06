/** The ports of {@code accounts}, in SQL. */
@NullMarked
package org.hedgerow.store.accounts;

import org.jspecify.annotations.NullMarked;
