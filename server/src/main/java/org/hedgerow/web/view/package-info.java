/**
 * Views that several subjects show: words with their spans, checks, pictures, editions, named sets.
 */
@NullMarked
package org.hedgerow.web.view;

import org.jspecify.annotations.NullMarked;
