/** Pages on which administrators keep the reading rules and the orders of teaching. */
@NullMarked
package org.hedgerow.web.pages.teaching;

import org.jspecify.annotations.NullMarked;
