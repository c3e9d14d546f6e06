/**
 * What all pages share: the frame, addresses, fields of forms, letters with their sounds, problems
 * in words.
 */
@NullMarked
package org.hedgerow.web.page;

import org.jspecify.annotations.NullMarked;
