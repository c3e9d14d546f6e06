/** The table of routes: all subjects together. */
@NullMarked
package org.hedgerow.web.site;

import org.jspecify.annotations.NullMarked;
