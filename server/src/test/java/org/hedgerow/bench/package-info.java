/**
 * Benchmarks; never run by {@code mvn verify}. Run them by {@code mvn -pl server -am -Pbench verify
 * -DskipTests}.
 */
@NullMarked
package org.hedgerow.bench;

import org.jspecify.annotations.NullMarked;
