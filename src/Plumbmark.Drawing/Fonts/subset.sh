#!/usr/bin/env bash
# Makes the two fonts of the sheets from the npm package @expo-google-fonts/inter (SIL Open Font License 1.1, see OFL.txt).
# Needs npm and fonttools (pyftsubset). Run it only when a character is missing; its output is committed.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
npm pack --silent @expo-google-fonts/inter@0.4.2 >/dev/null
tar xzf ./*.tgz
# Latin with Extended-A and B parts, Greek, Cyrillic, punctuation, primes, fractions, superscripts, arrows, signs of mathematics, marks and boxes.
range="U+0020-007E,U+00A0-024F,U+02C6-02DD,U+0370-03FF,U+0400-045F,U+2010-2027,U+2030-203A,U+2044,U+2070-2094"
range="$range,U+20AC,U+2116,U+2122,U+2150-215F,U+2189,U+2190-2199,U+2202,U+2206,U+2211,U+2212,U+221A,U+221E,U+2248,U+2260,U+2264-2265"
range="$range,U+25A0-25A1,U+25B2-25BC,U+25C6-25CF,U+2610-2612,U+2713-2717"
for weight in 400Regular 700Bold; do
    pyftsubset "package/$weight/Inter_$weight.ttf" --unicodes="$range" --layout-features='' --no-hinting --desubroutinize \
        --drop-tables+=GPOS,GSUB,GDEF,STAT,DSIG --name-IDs='0,1,2,3,4,5,6,13,14' --no-recalc-timestamp \
        --output-file="$here/Inter-${weight#?00}.ttf"
done
cp package/LICENSE_FONT "$here/OFL.txt"
