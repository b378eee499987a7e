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

    private static readonly HashSet<string> s_reviewed = Reviewed();

    [Fact]
    public void Verbs_AndOptions_AreReviewed()
    {
        var text = Read("docs/command-line.md");
        Missing(Verbs().Matches(text).SelectMany(m => m.Groups["verbs"].Value.Split(' ')));
        Missing(Options().Matches(text).Select(m => m.Groups[1].Value));
        Missing(SheetKinds().Match(text).Groups[1].Value.Split(", "));
    }

    [Fact]
    public void Rooms_AndPages_AreReviewed()
    {
        var web = Web("*.cs");
        Missing(Rooms().Matches(web).Select(m => m.Groups[1].Value));
        Missing(
            SheetNames()
                .Matches(Read("src/Plumbmark.Web/Sheet/SheetKind.cs"))
                .SelectMany(m => new[] { m.Groups[1].Value, m.Groups[2].Value })
        );
        Missing(PageTitles().Matches(Web("*.razor")).Select(m => m.Groups[1].Value));
    }

    [Theory]
    [InlineData("car")]
    [InlineData("book")]
    public void MembersAndWordsOfFiles_AreReviewed(string name)
    {
        using var schema = JsonDocument.Parse(Read($"schemas/{name}.schema.json"));
        Missing(NamesIn(schema.RootElement));
    }

    [Fact]
    public void MembersOfAnswers_AreReviewed()
    {
        var writers = House.Sources("*Json.cs", "src").Select(File.ReadAllText);
        Missing(writers.SelectMany(w => Members().Matches(w).Select(m => m.Groups[1].Value)));
    }

    [Fact]
    public void ColumnsAndLayers_AreReviewed()
    {
        var car = DemoCar.File();
        var answer = FloorInspection.Of(car);
        Missing(ColumnMatch.Fields);
        Missing(ResultTables.All(car, answer).SelectMany(t => t.Heads.Prepend(t.Name)));
        Missing(Layers().Matches(Read("src/Plumbmark.Drawing/Exchange/FrameDxf.cs")).Select(m => m.Groups[1].Value));
    }

    [Fact]
    public void Colours_AreReviewed() =>
        Missing(
            Colours()
                .Matches(string.Join('\n', House.Sources("*.css", "src").Select(File.ReadAllText)))
                .Select(m => m.Groups[1].Value)
                .Where(IsColour)
        );

    // What a page says as label, heading or button. New ones are written to the end of the table when updating: look at them there.
    [Fact]
    public void LabelsOfTheApp_AreReviewed()
    {
        var labels = Labels()
            .Matches(Web("*.razor"))
            .Select(m => (m.Groups["label"].Value + m.Groups["text"].Value).Trim().TrimEnd('(', ',').Trim())
            .Where(l => l.Length > 1 && !l.Contains('\n', StringComparison.Ordinal) && !l.Contains('`', StringComparison.Ordinal))
            .Distinct(StringComparer.Ordinal)
            .Where(l => !s_reviewed.Contains(l))
            .Order(StringComparer.Ordinal)
            .ToList();
        if (House.IsUpdating && labels.Count > 0)
        {
            var rows = labels.Chunk(8).Select(c => $"| {string.Join(", ", c.Select(l => $"`{l}`"))} | labels | plain | |\n");
            File.AppendAllText(Repository.PathTo(Review.Split('/')), string.Concat(rows));
            return;
        }

        House.None(labels);
    }

    private static void Missing(IEnumerable<string> names) =>
        House.None(
            names.Distinct(StringComparer.Ordinal).Where(n => n.Length > 0 && !s_reviewed.Contains(n)).Order(StringComparer.Ordinal)
        );

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

    private static string Read(string path) => File.ReadAllText(Repository.PathTo(path.Split('/'))).ReplaceLineEndings("\n");

    private static string Web(string pattern) =>
        string.Join(
            '\n',
            House
                .Sources(pattern, "src/Plumbmark.Web")
                .SelectMany(File.ReadLines)
                .Where(l => !l.TrimStart().StartsWith("///", StringComparison.Ordinal))
        );

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
