/**
 * Sentences that a child can read: checking them.
 *
 * <p>Pure: no I/O, no framework, no clock; all values are immutable.
 */
@NullMarked
package org.hedgerow.sentences;

import org.jspecify.annotations.NullMarked;
