/** Tests that the documents are packed. */
@NullMarked
package org.hedgerow.apidocs;

import org.jspecify.annotations.NullMarked;
