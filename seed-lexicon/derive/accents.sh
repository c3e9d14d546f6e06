#!/bin/sh
# Derives the pronunciations of the accents that the dictionary is not in, byte for byte.
#
#   seed-lexicon/derive/accents.sh
#
# Needs espeak-ng (1.51), node 18 or later, and the program: mvn -q -DskipTests package. Run it after decisions.tsv or the scripts have
# changed, then weights.sh. espeak-ng is only run here; nothing of it is in the repository.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
seed="$here/../src/main/resources/seed"
jar="$here/../../server/target/hedgerow.jar"

[ -f "$jar" ] || { echo "accents.sh: build the program first: mvn -q -DskipTests package" >&2; exit 1; }
command -v espeak-ng >/dev/null || { echo "accents.sh: install espeak-ng first (Debian: apt-get install espeak-ng)" >&2; exit 1; }
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
node "$here/manifest.mjs" "$seed"
java -cp "$jar" org.hedgerow.seed.ListAlignments "$seed" >"$made/american.tsv"
node "$here/accents.mjs" "$made" "$seed"
node "$here/manifest.mjs" "$seed"
