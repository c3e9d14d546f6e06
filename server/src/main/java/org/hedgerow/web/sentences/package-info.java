/** Sentences: those of the bank, checked ones, and drafts composed on request. */
@NullMarked
package org.hedgerow.web.sentences;

import org.jspecify.annotations.NullMarked;
