using System.Globalization;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Press;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Press;

/// <summary>Reads the form about a part; what is not understood goes to the faults, all of it.</summary>
internal sealed class DescriptionReading(CarRequest request, FieldFaults faults)
{
    private const int MostBites = 50;
    private const double LargestStrainPercent = 20;
    private const double LargestLever = 100;

    private readonly LengthUnit _units = request.Car.File.Units;

    public PressJob Read(PressJob old)
    {
        var lines = Enumerable.Range(0, Math.Max(DescriptionFields.Lines, old.Lines.Count)).Select(Line).OfType<ProfileLine>();
        var outs = Enumerable
            .Range(0, Math.Max(DescriptionFields.OutReadings, old.OutBy.Count))
            .Select(i => Length($"out{i}"))
            .OfType<Length>();
        return new PressJob(old.Id, Part())
        {
            Section = Section(),
            OutBy = [.. outs],
            SetUp = SetUp(),
            Limits = Limits(),
            Lines = [.. lines],
            Winding = [.. Rows("winding", 4, LengthSign.MayBeNegative).Select(r => new WindingReading(r[0], r[1], r[2], r[3]))],
            Note = request.OptionalText("note", faults, most: 1000),
            Bites = old.Bites,
            CrackTests = old.CrackTests,
        };
    }

    private PressPart Part() =>
        new(
            request.RequiredText("name", Say("press.description.a-name"), faults),
            Word("kind", PressWordLists.Kinds),
            Word("make", PressWordLists.Makes),
            Word("material", PressWordLists.Materials),
            Positive("length"),
            new PartHistory(
                Answered("cracked"),
                Answered("kinked"),
                Answered("torn"),
                Answered("corroded"),
                Answered("welded"),
                Answered("heated"),
                Answered("pressedBefore")
            )
        );

    private PressSection? Section()
    {
        var shape = Word("shape", PressWordLists.Shapes);
        var depth = Positive("depth");
        var section = new PressSection(
            shape ?? SectionShape.Rectangle,
            depth ?? default,
            Positive("width"),
            Positive("wall"),
            Positive("flange"),
            Positive("foot")
        );
        if (shape is null || faults.Any)
        {
            return null;
        }

        if (depth is null)
        {
            faults.Add("depth", Say("press.description.this-section-needs-its"));
            return null;
        }

        foreach (var fault in section.Faults())
        {
            faults.Add(
                PressSection.Needs(section.Shape).FirstOrDefault(n => fault.Contains(n, StringComparison.Ordinal)) ?? "depth",
                fault
            );
        }

        return section;
    }

    private PressSetUp? SetUp()
    {
        var (left, right, ram) = (Positive("leftArm"), Positive("rightArm"), Length("ram", LengthSign.MayBeNegative));
        var lever = Number("lever", 1 / LargestLever, LargestLever) ?? 1;
        if (left is null != right is null)
        {
            faults.Add(left is null ? "leftArm" : "rightArm", Say("press.description.both-blocks-are-needed"));
        }

        return left is { } l && right is { } r
            ? new PressSetUp(l, r, ram, lever) { TravelAtPart = request.Field("travelAt") == "part" }
            : null;
    }

    private PressLimits Limits()
    {
        var usual = PressLimits.Usual;
        return new(
            Positive("straight"),
            Word("source", LimitWords) ?? LimitSource.Own,
            (Number("strain", 0, LargestStrainPercent) / 100) ?? usual.Strain,
            (int)(Number("bites", 1, MostBites) ?? usual.Bites),
            Positive("reading") ?? usual.Reading,
            Positive("travel") ?? usual.Travel
        );
    }

    private static WordList<LimitSource> LimitWords { get; } =
        new(("factory", LimitSource.Factory), ("practice", LimitSource.Practice), ("own", LimitSource.Own));

    private ProfileLine? Line(int number)
    {
        var gaps = Rows($"line{number}-gaps", 2, LengthSign.MayBeNegative);
        if (gaps.Count == 0)
        {
            return null;
        }

        var name = request.Field($"line{number}-name");
        return new ProfileLine(
            name.Length > 0 ? name : Say("press.description.line-n", number + 1),
            Word($"line{number}-plane", PressWordLists.Planes) ?? BendPlane.Ram,
            Word($"line{number}-from", PressWordLists.Edges) ?? MeasuredFrom.Hollow,
            [.. gaps.Select(g => new ProfileGap(g[0], g[1]))]
        );
    }

    /// <summary>Rows of lengths with a colon between them; an empty row is passed over.</summary>
    private List<Length[]> Rows(string field, int columns, LengthSign sign)
    {
        var rows = new List<Length[]>();
        foreach (var row in request.Field(field).Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var cells = row.Split(':', '\t', '=');
            if (cells.Length != columns)
            {
                faults.Add(field, Say("press.description.found-lengths-with-a", row, columns));
                continue;
            }

            Length?[] read = [.. cells.Select(cell => Cell(field, row, cell, sign))];
            if (read.All(r => r is not null))
            {
                rows.Add([.. read.Select(r => r!.Value)]);
            }
        }

        return rows;
    }

    private Length? Cell(string field, string row, string cell, LengthSign sign) =>
        LengthText
            .Read(cell.Trim(), _units, sign)
            .Match<Length?>(
                length => length,
                refused =>
                {
                    faults.Add(field, Say("press.description.in-n-n", row, refused.Sentence));
                    return null;
                }
            );

    private Length? Length(string field, LengthSign sign = LengthSign.NeverNegative) => request.OptionalLength(field, _units, faults, sign);

    private Length? Positive(string field)
    {
        var length = Length(field);
        if (length == Engine.Lengths.Length.Zero)
        {
            faults.Add(field, Say("press.description.found-0-more-than"));
        }

        return length;
    }

    private Answer? Answered(string field) => Word(field, PressWordLists.Answers);

    private T? Word<T>(string field, WordList<T> words)
        where T : struct, Enum
    {
        var text = request.Field(field);
        if (text.Length == 0)
        {
            return null;
        }

        if (words.TryGetValue(text, out var value))
        {
            return value;
        }

        faults.Add(field, Say("press.description.choose-one-of-the"));
        return null;
    }

    private double? Number(string field, double least, double most)
    {
        var text = request.Field(field);
        if (text.Length == 0)
        {
            return null;
        }

        if (
            double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            && number >= least
            && number <= most
        )
        {
            return number;
        }

        faults.Add(field, Say("press.description.found-a-number-from", text, least, most));
        return null;
    }
}
