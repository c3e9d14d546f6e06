/** Words: lists and what narrows them, single words, checks, letters matched to sounds. */
@NullMarked
package org.hedgerow.web.words;

import org.jspecify.annotations.NullMarked;
