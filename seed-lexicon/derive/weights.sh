#!/bin/sh
# Learns the weights of the catalogue from the dictionary, by the aligner's own learner, and writes them as data.
#
#   seed-lexicon/derive/weights.sh
#
# Run it after the catalogue has changed. Needs the program: mvn -q -DskipTests package. If the old weights keep the
# program from being built, that does not matter: the learner does not read them.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
seed="$here/../src/main/resources/seed"
jar="$here/../../server/target/hedgerow.jar"

[ -f "$jar" ] || { echo "weights.sh: build the program first: mvn -q -DskipTests package" >&2; exit 1; }
node "$here/manifest.mjs" "$seed"
java -cp "$jar" org.hedgerow.seed.LearnWeights "$seed"
node "$here/manifest.mjs" "$seed"
