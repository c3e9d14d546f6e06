/** An invented training centre to look around in. Nothing here is needed to run a real one. */
@NullMarked
package org.hedgerow.app.demo;

import org.jspecify.annotations.NullMarked;
