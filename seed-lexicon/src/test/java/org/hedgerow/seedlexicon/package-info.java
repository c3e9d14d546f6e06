@NullMarked
package org.hedgerow.seedlexicon;

import org.jspecify.annotations.NullMarked;
