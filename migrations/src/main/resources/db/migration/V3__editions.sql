-- From now on a row of words is one version of a word: every change of a word, whatever hangs on
-- it, ends its row and begins another, with all its tags and pronunciations. So those need no
-- editions of their own, and a published edition never changes.

alter table editions
  add column account_id integer references accounts,
  add column contribution_id integer;
comment on column editions.account_id is 'Who decided; null where the program did.';
comment on column editions.contribution_id is 'The contribution that was approved; null where it came about otherwise.';

alter table words drop constraint words_spelling_key;
create unique index words_current on words (spelling) where until_edition is null;
create index words_past on words (spelling) where until_edition is not null;
-- The first edition is read whole, so these leave it out and stay small.
create index words_begun on words (since_edition) where since_edition > 1;
create index words_ended on words (until_edition) where until_edition is not null;
comment on table words is 'Every word of the bank, with a row for each version of it.';
comment on column words.spelling is 'Lower-case letters a to z; once among the rows that haven''t ended.';
comment on column words.since_edition is 'The first edition in which the word stands so.';
comment on column words.until_edition is 'The first edition in which it doesn''t; null for the present version.';

alter table pronunciations
  drop column since_edition,
  drop column until_edition;
create unique index pronunciations_of_words
  on pronunciations (word_id, accent, sounds, arpabet) nulls not distinct;
