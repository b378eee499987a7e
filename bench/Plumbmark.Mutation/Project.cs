using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Plumbmark.Mutation;

/// <summary>One project of the program, compiled in memory with a change.</summary>
internal sealed class Project
{
    private readonly CSharpCompilation _compilation;
    private readonly Dictionary<string, SyntaxTree> _trees;
    private readonly CSharpParseOptions _options = CSharpParseOptions.Default.WithLanguageVersion(LanguageVersion.CSharp14);
    private readonly ResourceDescription[] _resources;

    /// <summary>Reads the project.</summary>
    /// <param name="root">The checkout.</param>
    /// <param name="name">Such as Plumbmark.Engine.</param>
    /// <param name="built">The folder of the built tests, where the assemblies that the project uses lie.</param>
    public Project(string root, string name, string built)
    {
        Folder = Path.Combine(root, "src", name);
        var configuration = Directory.GetParent(built)!.Name;
        var files = Directory
            .EnumerateFiles(Folder, "*.cs", SearchOption.AllDirectories)
            .Where(f => !Below(f).StartsWith("obj/", StringComparison.Ordinal) && !Below(f).StartsWith("bin/", StringComparison.Ordinal))
            .Concat(Directory.EnumerateFiles(Path.Combine(Folder, "obj", configuration, "net10.0"), "*.cs"));
        _trees = files.ToDictionary(Below, f => CSharpSyntaxTree.ParseText(File.ReadAllText(f), _options, f), StringComparer.Ordinal);
        var framework = Path.GetDirectoryName(typeof(object).Assembly.Location)!;
        var pack = Path.Combine(framework, "../../../packs/Microsoft.NETCore.App.Ref", Path.GetFileName(framework));
        var references = Directory
            .EnumerateFiles(Path.Combine(pack, "ref/net10.0"), "*.dll")
            .Concat(
                Directory
                    .EnumerateFiles(built, "Plumbmark.*.dll")
                    .Where(f => string.CompareOrdinal(Path.GetFileNameWithoutExtension(f), name) < 0)
            )
            .Where(f => !f.EndsWith("Tests.dll", StringComparison.Ordinal));
        var plain = CSharpCompilation.Create(
            name,
            _trees.Values,
            references.Select(f => MetadataReference.CreateFromFile(f)),
            new CSharpCompilationOptions(
                OutputKind.DynamicallyLinkedLibrary,
                nullableContextOptions: NullableContextOptions.Enable,
                optimizationLevel: OptimizationLevel.Release
            )
        );
        CSharpGeneratorDriver
            .Create([RegexGenerator(pack)], parseOptions: _options)
            .RunGeneratorsAndUpdateCompilation(plain, out var whole, out _);
        _compilation = (CSharpCompilation)whole;
        _resources =
        [
            .. new[] { "car.schema.json", "book.schema.json" }.Select(s => new ResourceDescription(
                s,
                () => File.OpenRead(Path.Combine(root, "schemas", s)),
                isPublic: true
            )),
        ];
    }

    /// <summary>Where the project stands.</summary>
    public string Folder { get; }

    /// <summary>The assembly with every change to the given files or folders behind a switch; a change's number is its place in the list, from 1.</summary>
    public (byte[] Assembly, IReadOnlyList<Change> Changes, int NotTried) Compile(IReadOnlyList<string> files)
    {
        var found = _trees
            .Where(t => files.Any(f => t.Key == f || t.Key.StartsWith($"{f}/", StringComparison.Ordinal)))
            .OrderBy(t => t.Key, StringComparer.Ordinal)
            .ToDictionary(t => t.Key, t => Mutation.Changes.To(t.Key, t.Value), StringComparer.Ordinal);
        var all = found.Values.SelectMany(f => f).Select((f, i) => (Id: i + 1, f.Host, f.Change)).ToList();
        var refused = new HashSet<int>();
        while (true)
        {
            var written = found.Keys.ToDictionary(
                f => f,
                f => Switched.Of(_trees[f], all.Where(c => c.Change.File == f && !refused.Contains(c.Id))),
                StringComparer.Ordinal
            );
            var compilation = _compilation.AddSyntaxTrees(CSharpSyntaxTree.ParseText(Switched.Switch, _options));
            var changed = new List<SyntaxTree>();
            foreach (var (file, switched) in written)
            {
                changed.Add(CSharpSyntaxTree.ParseText(switched.Text, _options, file));
                compilation = compilation.ReplaceSyntaxTree(_trees[file], changed[^1]);
            }

            // Only the changed files are asked: much quicker than the whole.
            var errors = changed
                .SelectMany(t => compilation.GetSemanticModel(t).GetDiagnostics())
                .Where(d => d.Severity == DiagnosticSeverity.Error)
                .ToList();
            if (errors.Count == 0)
            {
                using var assembly = new MemoryStream();
                var result = compilation.Emit(assembly, manifestResources: _resources);
                errors = [.. result.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error)];
                if (result.Success)
                {
                    // Numbers stay as they are in the assembly; what the compiler refused has line 0.
                    return (
                        assembly.ToArray(),
                        [.. all.Select(c => refused.Contains(c.Id) ? c.Change with { Line = 0 } : c.Change)],
                        refused.Count
                    );
                }
            }

            Console.Error.WriteLine($"{errors.Count} errors, {all.Count - refused.Count} changes");
            Refuse(errors, written, refused);
        }
    }

    private static void Refuse(IEnumerable<Diagnostic> errors, Dictionary<string, Switched> written, HashSet<int> refused)
    {
        var before = refused.Count;
        foreach (var error in errors)
        {
            var file = error.Location.SourceTree?.FilePath ?? string.Empty;
            if (written.TryGetValue(file, out var switched) && switched.At(error.Location.SourceSpan) is { } id)
            {
                refused.Add(id);
            }
        }

        if (refused.Count == before)
        {
            throw new InvalidOperationException(string.Join('\n', errors.Take(10)));
        }
    }

    private string Below(string file) => Path.GetRelativePath(Folder, file).Replace('\\', '/');

    private static ISourceGenerator RegexGenerator(string pack)
    {
        var assembly = Assembly.LoadFrom(
            Path.GetFullPath(Path.Combine(pack, "analyzers/dotnet/cs/System.Text.RegularExpressions.Generator.dll"))
        );
        var type = assembly.GetType("System.Text.RegularExpressions.Generator.RegexGenerator", throwOnError: true)!;
        return ((IIncrementalGenerator)Activator.CreateInstance(type)!).AsSourceGenerator();
    }
}
