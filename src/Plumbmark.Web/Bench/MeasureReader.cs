using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Language;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Bench;

/// <summary>Takes a measure out of its form; what is not understood goes to the faults.</summary>
internal sealed class MeasureReader(CarRequest request, FieldFaults faults)
{
    private LengthUnit Units => request.Car.File.Units;

    /// <summary>The measure; null when something is wrong.</summary>
    public Measure? Read(MeasureKind kind, string id)
    {
        var measure = kind.Word switch
        {
            "length" => Plain(id),
            "angle" => Angle(id),
            "straightedge" => Straightedge(id),
            "rods" => Rods(id),
            "heights" => Heights(id),
            "bore" => Bore(id),
            "centres" => Centres(id),
            "back-to-back" => BackToBack(id),
            "spring" => Spring(id),
            _ => RunOut(id),
        };
        var tool = request.OptionalText("tool", faults, most: 40);
        var note = request.OptionalText("note", faults, most: 300);
        return faults.Any || measure is null ? null : measure with { Tool = tool, Note = note };
    }

    private Measure? Plain(string id)
    {
        var dimension = Dimension();
        var values = Repeats(LengthSign.MayBeNegative);
        return faults.Any ? null : new Measure.Plain(id, dimension, values);
    }

    private Measure? Angle(string id)
    {
        var dimension = Dimension();
        var angles = new List<Amount.OfAngle>();
        foreach (var field in new[] { "value1", "value2", "value3" }.Where(f => request.Field(f).Length > 0))
        {
            var text = request.Field(field);
            if ((AmountText.ReadAngle(text) ?? AmountText.ReadAngle(text + " deg")) is { } angle)
            {
                angles.Add(angle);
            }
            else
            {
                faults.Add(field, Say("bench.measure.is-not-an-angle", text));
            }
        }

        if (angles.Count == 0)
        {
            faults.Add("value1", Say("bench.measure.nothing-is-written-here"));
        }

        return faults.Any ? null : new Measure.Angle(id, dimension, angles);
    }

    private Measure? Straightedge(string id)
    {
        var dimension = Dimension();
        var gaps = new List<Gap>();
        for (var n = 1; n <= MeasureKind.Gaps; n++)
        {
            if (request.Field($"at{n}").Length + request.Field($"gap{n}").Length == 0)
            {
                continue;
            }

            var at = request.RequiredLength($"at{n}", Units, faults);
            if (ReadGap($"gap{n}", at ?? Length.Zero) is { } gap)
            {
                gaps.Add(gap);
            }
        }

        if (gaps.Count < 3 && !faults.Any)
        {
            faults.Add("at1", Texts.Count("bench.measure.too-few-gaps", gaps.Count));
        }

        return faults.Any ? null : new Measure.Straightedge(id, dimension, gaps);
    }

    /// <summary>A length, two lengths with "to" between them, or a number of sheets.</summary>
    private Gap? ReadGap(string field, Length at)
    {
        var text = request.Field(field);
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words is [var count, "sheet" or "sheets"] && int.TryParse(count, out var sheets) && sheets is >= 0 and <= 100)
        {
            return Gap.OfPaper(at, sheets);
        }

        var between = text.Split(" to ", StringSplitOptions.TrimEntries);
        if (between.Length == 2)
        {
            var (goes, stops) = (Part(field, between[0]), Part(field, between[1]));
            if (goes is { } g && stops is { } s && g >= s)
            {
                faults.Add(field, Say("bench.measure.goes-and-stops-the", between[0], between[1]));
            }

            return goes is { } thin && stops is { } thick ? new Gap(at, thin, thick) : null;
        }

        return request.RequiredLength(field, Units, faults) is { } gap ? new Gap(at, gap) : null;
    }

    private Length? Part(string field, string text) =>
        LengthText
            .Read(text, Units)
            .Match<Length?>(
                length => length,
                refused =>
                {
                    faults.Add(field, refused.Sentence);
                    return null;
                }
            );

    private Measure? Rods(string id)
    {
        var (from, to) = Ends(Say("bench.measure.an-eye"));
        var span = Positive("span");
        var (near, far) = (Optional("near"), Optional("far"));
        var first = Pair("fromFirst", "fromSecond");
        var second = Pair("toFirst", "toSecond");
        if (near is null != far is null)
        {
            faults.Add(near is null ? "near" : "far", Say("bench.measure.the-rods-distance-is"));
        }

        if (first is null != second is null)
        {
            faults.Add(first is null ? "fromFirst" : "toFirst", Say("bench.measure.both-rods-heights-are"));
        }

        if (near is null && first is null && !faults.Any)
        {
            faults.Add("near", Say("bench.measure.write-the-rods-distance"));
        }

        return faults.Any ? null : new Measure.Rods(id, from, to, span!.Value, near, far, first, second);
    }

    private Measure? Heights(string id)
    {
        var face = new List<FaceHeight>();
        for (var n = 1; n <= MeasureKind.FacePlaces; n++)
        {
            string[] names = [$"faceX{n}", $"faceY{n}", $"faceHeight{n}"];
            if (n > 3 && names.All(f => request.Field(f).Length == 0))
            {
                continue;
            }

            if (Signed(names[0]) is { } x && Signed(names[1]) is { } y && Signed(names[2]) is { } height)
            {
                face.Add(new FaceHeight(x, y, height));
            }
        }

        var dimension = Dimension();
        var (px, py, ph) = (Signed("x"), Signed("y"), Signed("height"));
        return faults.Any ? null : new Measure.Heights(id, face, [new PlaceHeight(dimension, px!.Value, py!.Value, ph!.Value)]);
    }

    private Measure? Bore(string id)
    {
        var bore = request.RequiredText("bore", Say("bench.measure.the-bores-name-such"), faults, most: 40);
        var mouth = new[] { Positive("mouth1"), Positive("mouth2") };
        var deep = Pair("deep1", "deep2");
        var mate = Optional("mate");
        return faults.Any
            ? null
            : new Measure.Bore(
                id,
                Name(bore),
                [.. mouth.Select(m => m!.Value)],
                deep is { } d ? [d.First, d.Second] : [],
                mate,
                request.Field("mateIs") == "bush" ? BoreMate.Bush : BoreMate.Pin
            );
    }

    private Measure? Centres(string id)
    {
        var (from, to) = Ends(Say("bench.measure.a-bore"));
        var values = Repeats(LengthSign.NeverNegative);
        var over = request.Field("over") switch
        {
            "inside" => CentresOver.Inside,
            "outside" => CentresOver.Outside,
            _ => CentresOver.Centre,
        };
        return faults.Any ? null : new Measure.Centres(id, from, to, values, over);
    }

    private Measure? BackToBack(string id)
    {
        var dimension = Dimension();
        var value = Signed("value1");
        return faults.Any ? null : new Measure.BackToBack(id, [new SideDifference(dimension, value!.Value)]);
    }

    private Measure? Spring(string id)
    {
        var loads = new List<LoadedLength>();
        for (var n = 1; n <= MeasureKind.Loads; n++)
        {
            var (field, text) = ($"load{n}", request.Field($"load{n}"));
            if (text.Length + request.Field($"length{n}").Length == 0)
            {
                continue;
            }

            if (AmountText.ReadLoad(text) is not { } load)
            {
                faults.Add(field, Say("bench.measure.is-not-a-load", text));
            }
            else if (Positive($"length{n}") is { } length)
            {
                loads.Add(new LoadedLength(load, length));
            }
        }

        if (loads.Count < 2 && !faults.Any)
        {
            faults.Add("load1", Say("bench.measure.a-rate-needs-the"));
        }

        return faults.Any ? null : new Measure.SpringLoads(id, loads);
    }

    private Measure? RunOut(string id)
    {
        var dimension = Dimension();
        var (high, low) = (Signed("value1"), Signed("value2"));
        return faults.Any ? null : new Measure.RunOut(id, dimension, [high!.Value, low!.Value]);
    }

    private string Dimension() => Name(request.RequiredText("dimension", Say("bench.measure.a-name-for-it"), faults, most: 40));

    /// <summary>Names are kept with dashes, so that "pad height" and the book's pad-height are one.</summary>
    private static string Name(string text) => string.Join('-', text.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private (string From, string To) Ends(string what)
    {
        var (from, to) = (
            Name(request.RequiredText("from", what, faults, most: 40)),
            Name(request.RequiredText("to", what, faults, most: 40))
        );
        if (from.Length > 0 && from == to)
        {
            faults.Add("to", Say("bench.measure.both-are-the-same"));
        }

        return (from, to);
    }

    private IReadOnlyList<Length> Repeats(LengthSign sign)
    {
        var first = request.RequiredLength("value1", Units, faults, sign);
        Length?[] all =
        [
            first,
            request.OptionalLength("value2", Units, faults, sign),
            request.OptionalLength("value3", Units, faults, sign),
        ];
        return [.. all.OfType<Length>()];
    }

    private (Length First, Length Second)? Pair(string first, string second)
    {
        if (request.Field(first).Length + request.Field(second).Length == 0)
        {
            return null;
        }

        var (a, b) = (Signed(first), Signed(second));
        return a is { } one && b is { } two ? (one, two) : null;
    }

    private Length? Optional(string field) => request.Field(field).Length == 0 ? null : Positive(field);

    private Length? Positive(string field)
    {
        var length = request.RequiredLength(field, Units, faults);
        if (length == Length.Zero)
        {
            faults.Add(field, Say("bench.measure.found-0-this-must"));
        }

        return length;
    }

    private Length? Signed(string field) => request.RequiredLength(field, Units, faults, LengthSign.MayBeNegative);
}
