/** The first import: makes words, catalogue and accents out of the seed lexicon. */
@NullMarked
package org.hedgerow.seed;

import org.jspecify.annotations.NullMarked;
