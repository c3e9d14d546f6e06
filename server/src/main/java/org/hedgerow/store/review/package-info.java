/** The ports of {@code review}, in SQL. */
@NullMarked
package org.hedgerow.store.review;

import org.jspecify.annotations.NullMarked;
