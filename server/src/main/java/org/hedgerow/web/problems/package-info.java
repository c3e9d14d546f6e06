/** What is answered when a request can't be: RFC 9457 problem details with stable types. */
@NullMarked
package org.hedgerow.web.problems;

import org.jspecify.annotations.NullMarked;
