using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Plumbmark.Testing;

namespace Plumbmark.House.Tests.Architecture;

/// <summary>Names say what a thing is; STYLE.md lists the endings that do not.</summary>
public partial class NameTests
{
    private static readonly string[] s_bannedEndings =
    [
        "Manager",
        "Helper",
        "Helpers",
        "Util",
        "Utils",
        "Utility",
        "Service",
        "Processor",
        "Handler",
        "Info",
        "Data",
        "Dto",
        "Base",
        "Impl",
    ];

    private static readonly string[] s_bannedFolders =
    [
        "Common",
        "Shared",
        "Core",
        "Abstractions",
        "Utils",
        "Helpers",
        "Misc",
        "Models",
        "Services",
    ];

    [Fact]
    public void NoType_HasAnEndingThatSaysNothing()
    {
        var wrong = House
            .Assemblies.SelectMany(a => a.GetTypes())
            .Where(t =>
                !t.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false)
                && t.FullName!.StartsWith("Plumbmark", StringComparison.Ordinal)
            )
            .Where(t => s_bannedEndings.Any(e => t.Name.EndsWith(e, StringComparison.Ordinal)))
            .Select(t => t.FullName);
        House.None(wrong);
    }

    [Fact]
    public void NoFolder_IsADrawerForEverything_AndNoneIsDeeperThanThree()
    {
        var folders = House
            .Sources("*.cs", "src")
            .Select(f => Path.GetDirectoryName(House.Relative(f))!.Replace('\\', '/').Split('/')[2..])
            .DistinctBy(parts => string.Join('/', parts))
            .ToList();
        Assert.Empty(folders.SelectMany(f => f).Intersect(s_bannedFolders));
        Assert.DoesNotContain(folders, f => f.Length > 3);
    }

    // A folder may only sort the files of its room (Floor/Words, Book/Serials): then they share the room's namespace.
    [Fact]
    public void Namespaces_FollowFolders()
    {
        var wrong =
            from file in House.Sources("*.cs", "src")
            let line = File.ReadLines(file).FirstOrDefault(l => l.StartsWith("namespace ", StringComparison.Ordinal))
            where line is not null
            let parts = Path.GetDirectoryName(House.Relative(file))!.Replace('\\', '/').Split('/')[1..]
            let folder = string.Join('.', parts)
            let room = string.Join('.', parts.Take(2))
            where line != $"namespace {folder};" && line != $"namespace {room};"
            select $"{House.Relative(file)}: {line}";
        House.None(wrong);
    }

    // To be taken apart; a file leaves this list with the commit that does it.
    private static readonly string[] s_stillTogether =
    [
        "src/Plumbmark.Inspection/Floor/Levelling/LevelSection.cs",
        "src/Plumbmark.Inspection/Floor/Levelling/LevellingAnswer.cs",
        "src/Plumbmark.Web/Floor/EntryKind.cs",
        "src/Plumbmark.Web/Server/PageRequest.cs",
    ];

    // A closed outcome keeps its cases inside; parts of one type may stand in several files.
    [Fact]
    public void OneFile_HoldsOnePublicType()
    {
        var wrong =
            from file in House.Sources("*.cs", "src")
            let names = PublicTypes()
                .Matches(File.ReadAllText(file))
                .Select(m => m.Groups[1].Value)
                .Distinct(StringComparer.Ordinal)
                .ToList()
            where names.Count > 1 && !s_stillTogether.Contains(House.Relative(file))
            select $"{House.Relative(file)}: {string.Join(", ", names)}";
        House.None(wrong);
    }

    [Theory]
    [InlineData("src")]
    [InlineData("tests")]
    [InlineData("bench")]
    public void NoFile_IsLongerThan600Lines_AndOver400IsToldToTheReviewer(string folder)
    {
        var lengths = House
            .Sources("*.cs", folder)
            .Concat(House.Sources("*.razor", folder))
            .Concat(House.Sources("*.js", folder))
            .Concat(House.Sources("*.css", folder))
            .Where(f => !f.EndsWith("axe.min.js", StringComparison.Ordinal))
            .Select(f => (File: House.Relative(f), Lines: File.ReadLines(f).Count()))
            .Where(f => f.Lines > 400)
            .ToList();
        foreach (var (file, lines) in lengths)
        {
            TestContext.Current.AddWarning($"{file} has {lines} lines; over 400 needs a reason in review.");
        }

        Assert.DoesNotContain(lengths, f => f.Lines > 600);
    }

    [Fact]
    public void Repository_SpeaksOfItselfAlone()
    {
        // Workshop paths, other people's folders and half-done marks have no place in what is given away. The workshop is wherever this checkout stands.
        var workshop = WorkshopPath();
        var wrong =
            from file in House.Sources("*.cs", "src", "tests", "bench").Concat(House.Sources("*.md", "docs"))
            where !file.EndsWith("NameTests.cs", StringComparison.Ordinal)
            from line in File.ReadLines(file)
            where Leftovers().IsMatch(line) || workshop.IsMatch(line)
            select $"{House.Relative(file)}: {line.Trim()}";
        House.None(wrong);
    }

    // Matches a public type that begins at the left margin; nested cases of a closed outcome are indented.
    [GeneratedRegex(
        @"^public (?:(?:static|sealed|abstract|readonly|partial|ref) )*(?:record struct|record class|record|class|struct|interface|enum|delegate [\w<>\[\]?,]+(?: [\w<>\[\]?]+)*?) (?<name>\w+)",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex PublicTypes();

    // The folder around the checkout, where a path begins; of a checkout at the root of the disk only itself.
    private static Regex WorkshopPath()
    {
        var around = Path.GetDirectoryName(Repository.Root);
        var folder = around is null || around == Path.GetPathRoot(Repository.Root) ? Repository.Root : around;
        return new Regex($@"(?<![\w.}}/-]){Regex.Escape(folder)}[/\\]", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
    }

    [GeneratedRegex(@"/home/|C:\\Users|\bTODO\b|\bFIXME\b|\bHACK\b|\bXXX\b")]
    private static partial Regex Leftovers();
}
