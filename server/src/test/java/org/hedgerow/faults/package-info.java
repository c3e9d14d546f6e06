/**
 * The fault suite: bad weather for the built program, with everything that was acknowledged looked
 * for afterwards. Never run by {@code mvn verify}; {@link org.hedgerow.faults.FaultSuite} is the
 * command.
 */
@NullMarked
package org.hedgerow.faults;

import org.jspecify.annotations.NullMarked;
