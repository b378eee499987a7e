using System.Globalization;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Press;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Press;

/// <summary>A job as the texts that stand in its form, by the names of the fields.</summary>
internal static class DescriptionFields
{
    /// <summary>How many lines the form has room for at least.</summary>
    public const int Lines = 3;

    /// <summary>How often being out can be written at least.</summary>
    public const int OutReadings = 3;

    /// <summary>The questions of the gate: field and words.</summary>
    public static IReadOnlyList<(string Field, string Label)> History { get; } =
    [
        ("cracked", Say("press.description.a-crack-anywhere-with")),
        ("kinked", Say("press.description.creased-kinked-or-dented")),
        ("torn", Say("press.description.an-edge-or-a")),
        ("corroded", Say("press.description.rusted-thin-pitted-or")),
        ("welded", Say("press.description.welded-since-it-left")),
        ("heated", Say("press.description.heated-blue-or-scaled")),
        ("pressedBefore", Say("press.description.bent-back-before")),
    ];

    public static Dictionary<string, string> Of(PressJob job)
    {
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        AddPart(fields, job.Part);
        AddSection(fields, job.Section);
        for (var i = 0; i < job.OutBy.Count; i++)
        {
            fields[$"out{i}"] = job.OutBy[i].AsTyped;
        }

        AddSetUp(fields, job);
        for (var i = 0; i < job.Lines.Count; i++)
        {
            var line = job.Lines[i];
            fields[$"line{i}-name"] = line.Name;
            fields[$"line{i}-plane"] = PressWordLists.Planes.WordFor(line.Plane);
            fields[$"line{i}-from"] = PressWordLists.Edges.WordFor(line.Edge);
            fields[$"line{i}-gaps"] = string.Join('\n', line.Gaps.Select(g => $"{g.At.AsTyped} : {g.Gap.AsTyped}"));
        }

        fields["winding"] = string.Join(
            '\n',
            job.Winding.Select(w => $"{w.At.AsTyped} : {w.Left.AsTyped} : {w.Right.AsTyped} : {w.Width.AsTyped}")
        );
        fields["note"] = job.Note ?? "";
        return fields;
    }

    private static void AddPart(Dictionary<string, string> fields, PressPart part)
    {
        fields["name"] = part.Name;
        fields["kind"] = part.Kind is { } kind ? PressWordLists.Kinds.WordFor(kind) : "";
        fields["make"] = part.Make is { } make ? PressWordLists.Makes.WordFor(make) : "";
        fields["material"] = part.Material is { } material ? PressWordLists.Materials.WordFor(material) : "";
        fields["length"] = Typed(part.Length);
        var h = part.History;
        Answer?[] answers = [h.Cracked, h.Kinked, h.Torn, h.Corroded, h.Welded, h.Heated, h.PressedBefore];
        foreach (var ((field, _), answer) in History.Zip(answers))
        {
            fields[field] = answer is { } known ? PressWordLists.Answers.WordFor(known) : "";
        }
    }

    private static void AddSection(Dictionary<string, string> fields, PressSection? section)
    {
        fields["shape"] = section is null ? "" : PressWordLists.Shapes.WordFor(section.Shape);
        fields["depth"] = Typed(section?.Depth);
        fields["width"] = Typed(section?.Width);
        fields["wall"] = Typed(section?.Wall);
        fields["flange"] = Typed(section?.Flange);
        fields["foot"] = Typed(section?.Foot);
    }

    private static void AddSetUp(Dictionary<string, string> fields, PressJob job)
    {
        fields["leftArm"] = Typed(job.SetUp?.LeftArm);
        fields["rightArm"] = Typed(job.SetUp?.RightArm);
        fields["ram"] = Typed(job.SetUp?.Ram);
        fields["lever"] = job.SetUp is { Lever: < 1 or > 1 } setUp ? setUp.Lever.ToString(CultureInfo.InvariantCulture) : "";
        fields["travelAt"] = job.SetUp is { TravelAtPart: true } ? "part" : "ram";
        var limits = job.Limits;
        fields["straight"] = Typed(limits.Straight);
        fields["source"] = PressChoices.SourceWord(limits.Source);
        fields["strain"] = (100 * limits.Strain).ToString("0.####", CultureInfo.InvariantCulture);
        fields["bites"] = limits.Bites.ToString(CultureInfo.InvariantCulture);
        fields["reading"] = limits.Reading.AsTyped;
        fields["travel"] = limits.Travel.AsTyped;
    }

    private static string Typed(Length? length) => length?.AsTyped ?? "";
}
