/** Archives: the whole bank in one file, written, checked and read. */
@NullMarked
package org.hedgerow.store.archive;

import org.jspecify.annotations.NullMarked;
