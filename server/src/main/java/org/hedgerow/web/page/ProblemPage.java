package org.hedgerow.web.page;

import java.util.List;

/**
 * A page that says why there is nothing else to show, and where to go from here.
 *
 * @param messages what is wrong and what to do
 * @param ways where to go
 */
public record ProblemPage(String title, List<String> messages, List<FittingList> ways) {}
