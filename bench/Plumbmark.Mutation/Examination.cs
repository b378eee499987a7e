using System.Diagnostics;

namespace Plumbmark.Mutation;

/// <summary>Tries the changes of one subject.</summary>
internal sealed class Examination
{
    private static readonly TimeSpan s_warm = TimeSpan.FromMinutes(10);
    private static readonly TimeSpan s_longest = TimeSpan.FromSeconds(60); // without a word from the worker: then the change hangs

    private readonly Subject _subject;
    private readonly string _tests;
    private readonly string _project;
    private readonly int _all;
    private readonly int _notTried;
    private readonly List<(Change Change, string? Noticed)> _tried = [];
    private readonly List<string> _remarks = [];

    public Examination(string root, Subject subject, int most)
    {
        _subject = subject;
        _project = $"Plumbmark.{subject.Project}";
        var built = Directory
            .EnumerateFiles(Path.Combine(root, "tests", $"{_project}.Tests", "bin"), $"{_project}.Tests.dll", SearchOption.AllDirectories)
            .MaxBy(File.GetLastWriteTimeUtc)!;
        var folder = Path.Combine(root, "bench/Plumbmark.Mutation/bin/runs", subject.Name.Replace(' ', '-'));
        Directory.CreateDirectory(folder); // in the checkout, because tests look upwards for it
        foreach (var file in Directory.EnumerateFiles(Path.GetDirectoryName(built)!))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)), overwrite: true);
        }

        _tests = Path.Combine(folder, Path.GetFileName(built));
        (var assembly, var changes, _notTried) = new Project(root, _project, Path.GetDirectoryName(built)!).Compile(subject.Files);
        File.WriteAllBytes(Path.Combine(folder, $"{_project}.dll"), assembly);
        var ids = Enumerable.Range(1, changes.Count).Where(i => changes[i - 1].Line > 0).ToArray();
        _all = ids.Length;
        new Random(13).Shuffle(ids); // fixed, so that a second run looks at the same ones
        Array.Sort(ids, 0, Math.Min(most, ids.Length));
        var drawn = ids.Take(most).ToLookup(i => changes[i - 1].IsOnce);
        Try([.. drawn[false]], changes, fresh: false);
        foreach (var id in drawn[true])
        {
            Try([id], changes, fresh: true);
        }
    }

    /// <summary>The score and every change that nobody noticed.</summary>
    public void Print(TextWriter output, Dictionary<string, string> lookedAt)
    {
        var left = _tried.Where(t => t.Noticed is null).Select(t => t.Change).ToList();
        var (noticed, tried) = (_tried.Count - left.Count, _tried.Count);
        var same = left.Count(c => lookedAt.Said(c)?.StartsWith("same", StringComparison.Ordinal) == true);
        var (low, high) = Wilson(noticed, tried);
        output.WriteLine(
            $"{_subject.Name}: {noticed} of {tried} changes noticed, {100.0 * noticed / tried:0.0} %; without the {same} that do the same as before {100.0 * noticed / (tried - same):0.0} %"
        );
        output.WriteLine(
            tried == _all ? "  every change was tried" : $"  {tried} drawn of {_all}: of all of them {low:0} to {high:0} % (95 %)"
        );
        output.WriteLine(
            $"  {_notTried} more were refused by the compiler; by running too long were noticed {_tried.Count(t => t.Noticed == "too long")}"
        );
        _remarks.ForEach(r => output.WriteLine($"  {r}"));
        foreach (var change in left.OrderBy(c => c.File, StringComparer.Ordinal).ThenBy(c => c.Start))
        {
            output.WriteLine($"  {change}");
            if (lookedAt.Said(change) is { } said)
            {
                output.WriteLine($"      {said}");
            }
        }

        output.WriteLine();
        output.Flush();
    }

    // A worker that says nothing for too long is ended: its change counts as noticed, and a new worker goes on with the next.
    private void Try(List<int> ids, IReadOnlyList<Change> changes, bool fresh)
    {
        while (ids.Count > 0)
        {
            using var worker = Start(ids, fresh);
            var current = 0;
            while (Line(worker, current == 0 ? s_warm : s_longest) is { } line)
            {
                switch (line.Split(' ', 3))
                {
                    case ["try", var id]:
                        current = int.Parse(id);
                        break;
                    case ["done", var id, var failure]:
                        Took(ids, int.Parse(id), failure == "-" ? null : failure);
                        current = 0;
                        break;
                    case ["tests", ..] or ["without", ..] when !_remarks.Contains(line):
                        _remarks.Add(line);
                        break;
                }
            }

            worker.Kill(entireProcessTree: true);
            worker.WaitForExit();
            if (current > 0)
            {
                Took(ids, current, "too long");
            }
            else if (ids.Count > 0)
            {
                throw new InvalidOperationException($"{_subject.Name}: the worker ended before its first change.");
            }
        }

        void Took(List<int> left, int id, string? noticed)
        {
            left.Remove(id);
            _tried.Add((changes[id - 1], noticed));
            Console.Error.WriteLine($"{_tried.Count} {(noticed is null ? "LEFT" : "ok")} {changes[id - 1]} {noticed}");
        }
    }

    private Process Start(List<int> ids, bool fresh)
    {
        string[] arguments =
        [
            typeof(Examination).Assembly.Location,
            "worker",
            _tests,
            _project,
            string.Join(',', _subject.Tests),
            fresh ? "fresh" : "warm",
            string.Join(',', ids),
        ];
        return Process.Start(new ProcessStartInfo("dotnet", arguments) { RedirectStandardOutput = true, UseShellExecute = false })!;
    }

    private static string? Line(Process worker, TimeSpan longest)
    {
        var line = worker.StandardOutput.ReadLineAsync();
        return line.Wait(longest) ? line.Result : null;
    }

    // Wilson (1927), J. Am. Stat. Assoc. 22, 209: interval for a proportion, here with z = 1.96.
    private static (double Low, double High) Wilson(int hits, int of)
    {
        const double Z = 1.96;
        var (p, z2) = ((double)hits / of, Z * Z / of);
        var half = Z * Math.Sqrt((p * (1 - p) / of) + (z2 / (4 * of)));
        return (100 * (p + (z2 / 2) - half) / (1 + z2), 100 * (p + (z2 / 2) + half) / (1 + z2));
    }
}
