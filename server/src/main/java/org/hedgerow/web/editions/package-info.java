/** Editions: the log of what changed, its feed, and old editions. */
@NullMarked
package org.hedgerow.web.editions;

import org.jspecify.annotations.NullMarked;
