package org.hedgerow.web.people;

import java.util.List;

/**
 * One thing that was done, for people.
 *
 * @param at in words
 * @param what the action, in words
 * @param address of what it was done to; empty where it has no page
 * @param hasBefore whether anything is known of how it was
 */
record ShownRecord(
    long id,
    String at,
    String actor,
    String what,
    String subject,
    String address,
    boolean hasBefore,
    List<ShownField> fields) {}
