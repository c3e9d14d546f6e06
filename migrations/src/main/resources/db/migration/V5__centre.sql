-- What a centre says of itself, and ways to find something in the record of what was done.

create table centre (
  only_one boolean primary key default true check (only_one),
  name text check (char_length(name) between 1 and 80),
  approvals integer not null default 1 check (approvals in (1, 2)),
  version integer not null default 1 check (version > 0)
);
comment on table centre is 'The centre whose bank this is: one row.';
comment on column centre.only_one is 'Keeps it at one row.';
comment on column centre.name is 'What it is called, in any script; null until somebody says it.';
comment on column centre.approvals is 'How many reviewers must approve a contribution.';
comment on column centre.version is 'Counts the changes, so that nobody overwrites what they have not seen.';
insert into centre default values;

create index audit_action on audit (action, id);
create index audit_actor on audit (actor, id);
