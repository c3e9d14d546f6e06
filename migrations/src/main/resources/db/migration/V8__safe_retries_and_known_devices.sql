-- Requests that were sent with a key, and devices on which somebody has signed in.

create table idempotency_keys (
  account_id integer not null references accounts,
  key_hash text not null check (key_hash ~ '^[0-9a-f]{64}$'),
  request_hash text not null check (request_hash ~ '^[0-9a-f]{64}$'),
  status integer not null check (status between 200 and 299),
  location text,
  entity_tag text,
  media_type text not null,
  body text not null,
  at timestamptz not null,
  primary key (account_id, key_hash)
);
create index idempotency_keys_at on idempotency_keys (at);
comment on table idempotency_keys is 'Answers of requests that carried a key, to be given again; forgotten after a day.';
comment on column idempotency_keys.account_id is 'Who sent the request.';
comment on column idempotency_keys.key_hash is 'SHA-256 of the key.';
comment on column idempotency_keys.request_hash is 'SHA-256 of all that the request asks for.';
comment on column idempotency_keys.status is 'The HTTP status of the answer.';
comment on column idempotency_keys.location is 'Its header Location, if it has one.';
comment on column idempotency_keys.entity_tag is 'Its header ETag, if it has one.';
comment on column idempotency_keys.media_type is 'Its header Content-Type.';
comment on column idempotency_keys.body is 'Its body, encrypted with the key, in Base64.';
comment on column idempotency_keys.at is 'When it was answered.';

create table known_devices (
  secret_hash text not null check (secret_hash ~ '^[0-9a-f]{64}$'),
  account_id integer not null references accounts,
  seen_at timestamptz not null,
  primary key (secret_hash, account_id)
);
create index known_devices_account on known_devices (account_id);
comment on table known_devices is 'Browsers in which somebody has signed in; whoever guesses elsewhere doesn''t keep them waiting.';
comment on column known_devices.secret_hash is 'SHA-256 of the cookie.';
comment on column known_devices.account_id is 'Who signed in there.';
comment on column known_devices.seen_at is 'When they last did.';

comment on column sign_in_failures.subject is 'Who tried at what: a network at an account, a network, an account or a device.';
