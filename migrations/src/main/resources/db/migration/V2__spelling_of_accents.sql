-- Some words are spelt so only by the speakers of some accents (color, colour).
alter table accents add column spelling text check (spelling in ('american', 'british'));
comment on column accents.spelling is 'How its speakers spell; null where that isn''t said.';
update accents set spelling = case tag when 'en-US' then 'american' else 'british' end;
