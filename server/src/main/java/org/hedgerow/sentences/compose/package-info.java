/** Makes sentences that a child can read, out of what is known of words and of the world. */
@NullMarked
package org.hedgerow.sentences.compose;

import org.jspecify.annotations.NullMarked;
