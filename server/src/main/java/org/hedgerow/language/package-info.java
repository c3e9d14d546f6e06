/** Statistics of English, from a language model that others trained. */
@NullMarked
package org.hedgerow.language;

import org.jspecify.annotations.NullMarked;
