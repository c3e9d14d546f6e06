/** The pages about accounts: signing in, one's own account, and all of them for administrators. */
@NullMarked
package org.hedgerow.web.pages.people;

import org.jspecify.annotations.NullMarked;
