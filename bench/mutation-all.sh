#!/usr/bin/env bash
# The four subjects whose tests must notice 80 changes in 100: serial ranges, press gate, verdict, adjustment. Hours on two cores; run it alone.
#   bench/mutation-all.sh > bench/results/mutation.txt
set -euo pipefail
cd "$(dirname "$0")"
./mutation.sh "serial ranges" Plumbmark.Inspection "Book/Serials/*.cs" "Book/Serial*.cs"
./mutation.sh "press gate" Plumbmark.Inspection "Press/Gate.cs" "Press/*"
./mutation.sh "verdict" Plumbmark.Inspection "Floor/Verdicts/*.cs" "Floor/*"
./mutation.sh "adjustment" Plumbmark.Engine "Adjustment/*.cs" "Adjustment/*"
