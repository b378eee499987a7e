#!/usr/bin/env bash
# Which lines and branches of Engine and Inspection their own tests pass through. A line passed is not a line checked: see mutation.txt.
#   bench/coverage-of-tests.sh > bench/results/coverage-of-tests.txt
# Works on a copy, so that the tool need not be among the packages of the tests. COVERLET: the version of coverlet.MTP.
set -euo pipefail
cd "$(dirname "$0")/.."
copy=$(mktemp -d)
trap 'rm -rf "$copy"' EXIT
git ls-files -z -- src tests/Plumbmark.Testing tests/Plumbmark.Engine.Tests tests/Plumbmark.Inspection.Tests \
    bench schemas reference docs 'Directory.*' global.json .editorconfig Plumbmark.slnx | xargs -0 cp --parents -t "$copy"
cd "$copy"
find . -name packages.lock.json -delete
for project in Engine Inspection; do
    tests=tests/Plumbmark.$project.Tests
    sed -i "s|<ItemGroup>|<ItemGroup>\n    <PackageReference Include=\"coverlet.MTP\" VersionOverride=\"${COVERLET:-10.1.0}\" />|" "$tests/Plumbmark.$project.Tests.csproj"
    dotnet build "$tests" -v q -nologo -p:RunAnalyzers=false -p:EnforceCodeStyleInBuild=false -p:RestorePackagesWithLockFile=false \
        -p:UseMicrosoftTestingPlatformRunner=true >"$copy/build.txt" 2>&1 || { grep -m 5 error "$copy/build.txt" >&2; exit 1; }
    dotnet exec "$tests/bin/Debug/net10.0/Plumbmark.$project.Tests.dll" --coverlet --coverlet-include "[Plumbmark.$project]*" \
        --coverlet-output-format cobertura --results-directory "$copy/$project" >"$copy/run.txt" 2>&1 || { tail -n 20 "$copy/run.txt" >&2; exit 1; }
done
python3 - "$copy" <<'PY'
import collections, glob, sys, xml.etree.ElementTree as tree
for project in ("Engine", "Inspection"):
    file = glob.glob(f"{sys.argv[1]}/{project}/**/*cobertura*.xml", recursive=True)[0]
    lines = collections.defaultdict(lambda: [0, 0, 0, 0])  # passed, all, branches passed, branches
    seen = {}
    for c in tree.parse(file).getroot().iter("class"):
        for line in c.find("lines"):
            key = (c.get("filename"), line.get("number"))
            hit, part = int(line.get("hits")) > 0, line.get("condition-coverage", "(0/0)").split("(")[1].rstrip(")").split("/")
            old = seen.get(key, (False, 0, 0))
            seen[key] = (hit or old[0], max(int(part[0]), old[1]), max(int(part[1]), old[2]))
    for (name, _), (hit, some, all) in seen.items():
        parts = name.replace("\\", "/").split(f"Plumbmark.{project}/")[-1].split("/")
        for place in ("all", parts[0] if len(parts) > 1 else "(top)"):
            for i, n in enumerate((hit, 1, some, all)):
                lines[place][i] += n
    print(f"{project:<14}{'lines passed':>16}{'of':>8}{'%':>8}{'branches':>12}{'of':>8}{'%':>8}")
    for place, (hit, of, some, all) in sorted(lines.items(), key=lambda p: (p[0] != "all", p[0])):
        print(f"  {place:<12}{hit:>16}{of:>8}{100 * hit / of:>8.1f}{some:>12}{all:>8}{100 * some / max(1, all):>8.1f}")
    print()
PY
