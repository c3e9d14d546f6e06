/** The pages for people in a browser: made on the server, whole without scripts, livelier with. */
@NullMarked
package org.hedgerow.web.pages;

import org.jspecify.annotations.NullMarked;
