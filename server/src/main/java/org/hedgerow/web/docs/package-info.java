/** The documentation of the HTTP interface, for people and for programs. */
@NullMarked
package org.hedgerow.web.docs;

import org.jspecify.annotations.NullMarked;
