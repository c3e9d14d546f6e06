/** How administrators change reading rules, sequences and sight words, an edition a change. */
@NullMarked
package org.hedgerow.review.curriculum;

import org.jspecify.annotations.NullMarked;
