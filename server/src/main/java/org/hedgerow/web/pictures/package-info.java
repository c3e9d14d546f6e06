/** Pictures of words, as they are served. */
@NullMarked
package org.hedgerow.web.pictures;

import org.jspecify.annotations.NullMarked;
