/** What the bank still lacks for full material. */
@NullMarked
package org.hedgerow.web.needs;

import org.jspecify.annotations.NullMarked;
