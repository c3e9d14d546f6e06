/**
 * Words, the index over one edition of them, and queries.
 *
 * <p>Pure: no I/O, no framework, no clock; all values are immutable.
 */
@NullMarked
package org.hedgerow.lexicon;

import org.jspecify.annotations.NullMarked;
