using System.Text.Json;
using System.Text.RegularExpressions;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Inspection.Floor;
using Plumbmark.Testing;

namespace Plumbmark.House.Tests.Names;

/// <summary>docs/names-review.md has every name that a user can see, so that none comes in unlooked at.</summary>
public partial class NamesReviewTests
{
    private const string Review = "docs/names-review.md";

    private const int LongestLabel = 40; // characters; longer texts are sentences

    private static readonly HashSet<string> s_reviewed = Reviewed();

    [Fact]
    public void Verbs_AndOptions_AreReviewed()
    {
        var text = Read("docs/command-line.md");
        Missing(Verbs().Matches(text).SelectMany(m => m.Groups["verbs"].Value.Split(' ')), "verbs and options");
        Missing(Options().Matches(text).Select(m => m.Groups[1].Value), "verbs and options");
        Missing(SheetKinds().Match(text).Groups[1].Value.Split(", "), "verbs and options");
    }

    [Fact]
    public void Rooms_AndPages_AreReviewed()
    {
        var web = Web("*.cs");
        Missing(Rooms().Matches(web).Select(m => m.Groups[1].Value), "rooms, pages, sheets");
        Missing(
            SheetNames()
                .Matches(Read("src/Plumbmark.Web/Sheet/SheetKind.cs"))
                .SelectMany(m => new[] { m.Groups[1].Value, m.Groups[2].Value }),
            "rooms, pages, sheets"
        );
        Missing(PageTitles().Matches(Web("*.razor")).Select(m => m.Groups[1].Value).Where(t => t != "…"), "rooms, pages, sheets");
    }

    [Theory]
    [InlineData("car")]
    [InlineData("book")]
    public void MembersAndWordsOfFiles_AreReviewed(string name)
    {
        using var schema = JsonDocument.Parse(Read($"schemas/{name}.schema.json"));
        Missing(NamesIn(schema.RootElement), "members and words of files");
    }

    [Fact]
    public void MembersOfAnswers_AreReviewed()
    {
        var writers = House.Sources("*Json.cs", "src").Select(File.ReadAllText);
        Missing(writers.SelectMany(w => Members().Matches(w).Select(m => m.Groups[1].Value)), "members of answers");
    }

    [Fact]
    public void ColumnsAndLayers_AreReviewed()
    {
        var car = DemoCar.File();
        var answer = FloorInspection.Of(car);
        Missing(ColumnMatch.Fields, "columns and layers");
        Missing(ResultTables.All(car, answer).SelectMany(t => t.Heads.Prepend(t.Name)), "columns and layers");
        Missing(Layers().Matches(Read("src/Plumbmark.Drawing/Exchange/FrameDxf.cs")).Select(m => m.Groups[1].Value), "columns and layers");
    }

    [Fact]
    public void Colours_AreReviewed() =>
        Missing(
            Colours()
                .Matches(string.Join('\n', House.Sources("*.css", "src").Select(File.ReadAllText)))
                .Select(m => m.Groups[1].Value)
                .Where(IsColour),
            "colours"
        );

    // What a page says as label, heading or button.
    [Fact]
    public void LabelsOfTheApp_AreReviewed()
    {
        var labels = Labels()
            .Matches(Web("*.razor"))
            .Select(m => m.Groups["label"].Value + m.Groups["text"].Value)
            .Concat(Texts().Where(t => t.Length <= LongestLabel))
            .Select(l => l.Trim().TrimEnd('(', ',').Trim())
            .Where(l => l.Length > 1 && !l.Contains('\n', StringComparison.Ordinal) && !l.Contains('`', StringComparison.Ordinal))
            .ToList();
        Missing(labels, "labels");
    }

    // When updating, what is new goes to the end of the table as plain words: look at it there, and place it.
    private static void Missing(IEnumerable<string> names, string where)
    {
        var missing = names
            .Where(n => n.Length > 0 && !s_reviewed.Contains(n))
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .ToList();
        if (House.IsUpdating)
        {
            var rows = missing.Chunk(8).Select(c => $"| {string.Join(", ", c.Select(l => $"`{l}`"))} | {where} | plain | |\n");
            File.AppendAllText(Repository.PathTo(Review.Split('/')), string.Concat(rows));
            s_reviewed.UnionWith(missing);
            return;
        }

        House.None(missing);
    }

    private static bool IsColour(string variable) => variable is not ("--gap" or "--touch" or "--round");

    private static HashSet<string> Reviewed() =>
        Read(Review)
            .Split('\n')
            .Where(l => l.StartsWith("| `", StringComparison.Ordinal))
            .SelectMany(l => Quoted().Matches(l[..l.IndexOf(" | ", 2, StringComparison.Ordinal)]).Select(m => m.Groups[1].Value))
            .ToHashSet(StringComparer.Ordinal);

    private static IEnumerable<string> NamesIn(JsonElement schema)
    {
        if (schema.ValueKind == JsonValueKind.Array)
        {
            return schema.EnumerateArray().SelectMany(NamesIn);
        }

        if (schema.ValueKind != JsonValueKind.Object)
        {
            return [];
        }

        var own =
            schema.TryGetProperty("properties", out var p) && p.ValueKind == JsonValueKind.Object
                ? p.EnumerateObject().Select(m => m.Name)
                : [];
        var words =
            schema.TryGetProperty("enum", out var e) && e.ValueKind == JsonValueKind.Array
                ? e.EnumerateArray().Where(w => w.ValueKind == JsonValueKind.String).Select(w => w.GetString()!)
                : [];
        return own.Concat(words).Concat(schema.EnumerateObject().SelectMany(m => NamesIn(m.Value)));
    }

    private static IEnumerable<string> Texts()
    {
        using var texts = JsonDocument.Parse(Read("src/Plumbmark.Inspection/Language/en-GB.json"));
        // The labels of the pages; answers, sheets and verbs say sentences, and their labels are not what a hand looks for.
        var answers = string.Join(
            '\n',
            House.Sources("*.cs", "src/Plumbmark.Inspection", "src/Plumbmark.Drawing", "src/Plumbmark").Select(File.ReadAllText)
        );
        return
        [
            .. texts
                .RootElement.EnumerateObject()
                .Where(t => !answers.Contains($"\"{Plural().Replace(t.Name, "")}\"", StringComparison.Ordinal))
                .Select(t => t.Value.GetString()!)
                .Where(t => !t.EndsWith('.')),
        ];
    }

    private static string Read(string path) => File.ReadAllText(Repository.PathTo(path.Split('/'))).ReplaceLineEndings("\n");

    private static string Web(string pattern) =>
        string.Join(
            '\n',
            House
                .Sources(pattern, "src/Plumbmark.Web")
                .SelectMany(File.ReadLines)
                .Where(l => !l.TrimStart().StartsWith("///", StringComparison.Ordinal))
        );

    [GeneratedRegex(@"\.(one|many)$")]
    private static partial Regex Plural();

    [GeneratedRegex(@"`([^`]+)`")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"^## plumbmark (?<verbs>[\w -]+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Verbs();

    [GeneratedRegex(@"(?<![\w-])(--?[a-z?][\w-]*|-\?)(?=[ ,\n\]])")]
    private static partial Regex Options();

    [GeneratedRegex(@"Which sheet: ([^.\n]+)\.")]
    private static partial Regex SheetKinds();

    [GeneratedRegex(@"Room Room \{ get; \} = new\(""(\w+)""")]
    private static partial Regex Rooms();

    [GeneratedRegex(@"new\((?:""([a-z-]+)""|BeforeAfter), ""([^""]+)""")]
    private static partial Regex SheetNames();

    [GeneratedRegex(@"<Page Title=""([^""@]+)""")]
    private static partial Regex PageTitles();

    [GeneratedRegex(@"""([a-z][A-Za-z0-9]*)""")]
    private static partial Regex Members();

    [GeneratedRegex(@"\(""([A-Z_]{4,})"", \d+\)")]
    private static partial Regex Layers();

    [GeneratedRegex(@"(--[a-z][a-z-]+):")]
    private static partial Regex Colours();

    [GeneratedRegex(@"\bLabel=""(?<label>[^""@]+)""|<(?:h1|h2|h3|summary|legend|dt|button|th)\b[^>]*>(?<text>[^<@]{2,})")]
    private static partial Regex Labels();
}
