package org.hedgerow.web.editions;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.view.EditionLine;

/**
 * The page of all editions, the newest first.
 *
 * @param older the address of those before; empty at the end
 */
record EditionsPage(List<EditionLine> editions, Optional<String> older) {}
