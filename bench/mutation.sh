#!/usr/bin/env bash
# Mutation testing of one subject: changes the code a little (a > into a >=, a + into a -, a condition away) and counts how many changes the tests notice.
#   bench/mutation.sh NAME PROJECT 'MUTATED FILES, globs below the project' 'TEST FILES KEPT, globs below the test project'
# Works on a copy with only the tests of that subject, because every change runs all of them. Prints the score and every change that nobody noticed.
set -euo pipefail
cd "$(dirname "$0")/.."
name=$1 project=$2 mutated=$3 kept=$4
copy=$(mktemp -d)
trap 'rm -rf "$copy"' EXIT
git ls-files -z -- src tests schemas reference 'Directory.*' global.json .editorconfig Plumbmark.slnx docs/examples | xargs -0 cp --parents -t "$copy"
tests=tests/$project.Tests
# A tool of its own, so that ./test need not fetch it.
mkdir -p "$copy/$tests/.config" && cp bench/.config/dotnet-tools.json "$copy/$tests/.config/"
cd "$copy"
find "$tests" -name '*.cs' | sort >all.txt
for glob in $kept; do find "$tests" -path "$tests/$glob"; done | sort -u >kept.txt
comm -23 all.txt kept.txt | xargs -r rm
arguments=()
for glob in $mutated; do arguments+=(--mutate "**/$glob"); done
cd "$tests"
# How long the tool waits for dotnet --info, milliseconds: on a busy machine its usual four seconds are too few.
export DOTNET_INFO_WAIT_TIME=120000
dotnet tool restore >/dev/null
dotnet stryker --test-runner mtp --project "$project.csproj" --configuration Debug --concurrency "${MUTATION_JOBS:-1}" \
    --reporter json --verbosity warning --skip-version-check --output "$copy/out" "${arguments[@]}" >"$copy/log.txt" 2>&1 || { tail -n 40 "$copy/log.txt" >&2; exit 1; }
python3 - "$name" "$copy/out" <<'PY'
import collections, glob, json, sys
name, out = sys.argv[1:]
report = json.load(open(glob.glob(f"{out}/**/mutation-report.json", recursive=True)[0]))
count, left = collections.Counter(), []
for path, file in report["files"].items():
    lines = file["source"].split("\n")
    for m in file["mutants"]:
        count[m["status"]] += 1
        if m["status"] in ("Survived", "NoCoverage"):
            at = m["location"]["start"]
            left.append((path.split("src/")[-1], at["line"], m["mutatorName"], lines[at["line"] - 1].strip()[:90], m.get("replacement", "").strip()[:60].replace("\n", " ")))
noticed = count["Killed"] + count["Timeout"]
of = noticed + count["Survived"] + count["NoCoverage"]
print(f"{name}: {noticed} of {of} changes noticed, {100 * noticed / max(1, of):.1f} %")
for path, line, kind, code, to in sorted(left):
    print(f"  {path}:{line}  {kind}: {code}  ->  {to}")
PY
