using System.Reflection;
using Plumbmark.Testing;

namespace Plumbmark.House.Tests;

/// <summary>The six assemblies and their sources, as every test here looks at them.</summary>
internal static class House
{
    public static readonly string[] Projects =
    [
        "Plumbmark.Engine",
        "Plumbmark.Inspection",
        "Plumbmark.Store",
        "Plumbmark.Drawing",
        "Plumbmark.Web",
        "Plumbmark",
    ];

    /// <summary>Whether this run writes down what it finds instead of comparing: <c>PLUMBMARK_UPDATE=1</c>. Look at the difference before you commit it.</summary>
    public static bool IsUpdating => Environment.GetEnvironmentVariable("PLUMBMARK_UPDATE") == "1";

    public static IEnumerable<Assembly> Assemblies => Projects.Select(AssemblyOf);

    public static Assembly AssemblyOf(string project) => Assembly.Load(new AssemblyName(project == "Plumbmark" ? "plumbmark" : project));

    /// <summary>Hand-written source files below some folders of the repository, without what a build leaves behind.</summary>
    public static IEnumerable<string> Sources(string pattern, params string[] folders) =>
        folders
            .SelectMany(f => Directory.EnumerateFiles(Repository.PathTo(f), pattern, SearchOption.AllDirectories))
            .Where(f => !f.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj" or "node_modules"))
            .Order(StringComparer.Ordinal);

    /// <summary>Such as <c>src/Plumbmark/Program.cs</c>.</summary>
    public static string Relative(string path) => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/');

    /// <summary>Fails with every line, not with the first few.</summary>
    public static void None(IEnumerable<string?> faults)
    {
        var all = faults.ToList();
        if (all.Count > 0)
        {
            Assert.Fail($"{all.Count} faults:\n{string.Join('\n', all)}");
        }
    }

    /// <summary>Compares a text with a file of the repository, or writes it there when updating.</summary>
    public static void MatchesFile(string found, params string[] path)
    {
        var file = Repository.PathTo(path);
        if (IsUpdating)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, found);
            return;
        }

        Assert.True(File.Exists(file), $"{Relative(file)} is missing; PLUMBMARK_UPDATE=1 writes it.");
        var kept = File.ReadAllText(file).ReplaceLineEndings("\n");
        if (kept == found)
        {
            return;
        }

        var gone = kept.Split('\n').Except(found.Split('\n')).Select(l => $"- {l}");
        var come = found.Split('\n').Except(kept.Split('\n')).Select(l => $"+ {l}");
        Assert.Fail($"{Relative(file)} is stale; PLUMBMARK_UPDATE=1 writes it anew.\n{string.Join('\n', gone.Concat(come).Take(40))}");
    }
}
