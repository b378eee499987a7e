using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench.Json;

/// <summary>A measure on a part in a car file: the fields common to all, and those of its kind.</summary>
internal static partial class MeasureJson
{
    private static string Kinds => Texts.Say("bench.measure-json.length-angle-bore-centres-heights");

    public static Measure? Read(Fields fields)
    {
        var id = fields.RequiredText("id") ?? "";
        var kind = fields.Required("kind");
        var measure = kind?.Text switch
        {
            "length" => ReadPlain(fields, id),
            "angle" => ReadAngle(fields, id),
            "bore" => ReadBore(fields, id),
            "centres" => ReadCentres(fields, id),
            "heights" => ReadHeights(fields, id),
            "straightedge" => ReadStraightedge(fields, id),
            "rods" => ReadRods(fields, id),
            "back-to-back" => ReadBackToBack(fields, id),
            "spring" => ReadSpring(fields, id),
            "run-out" => ReadRunOut(fields, id),
            _ => RefuseKind(fields, kind),
        };
        var tool = fields.OptionalText("tool");
        var sigma = fields.OptionalLength("sigma", LengthBound.Positive);
        var note = fields.OptionalText("note");
        var withdrawn = fields.OptionalText("withdrawn");
        if (measure is not null || kind is null)
        {
            fields.RefuseOthers();
        }

        return measure is null || id.Length == 0 ? null : measure with { Tool = tool, Sigma = sigma, Note = note, Withdrawn = withdrawn };
    }

    private static Measure? ReadPlain(Fields fields, string id)
    {
        var dimension = fields.RequiredText("dimension");
        var values = Lengths(fields, "values", LengthBound.Any, least: 1);
        return dimension is null || values is null ? null : new Measure.Plain(id, dimension, values);
    }

    private static Measure? ReadAngle(Fields fields, string id)
    {
        var dimension = fields.RequiredText("dimension");
        var parts = Parts(fields, "values", least: 1);
        var values = parts?.Select(p => AmountPart.Angle(fields, p)).OfType<Amount.OfAngle>().ToList();
        return dimension is null || values is null || values.Count < parts!.Count ? null : new Measure.Angle(id, dimension, values);
    }

    private static Measure? ReadBore(Fields fields, string id)
    {
        var bore = fields.RequiredText("bore");
        var mouth = Lengths(fields, "mouth", LengthBound.Positive, least: 2, most: 2);
        var deep = fields.Optional("deep") is null ? [] : Lengths(fields, "deep", LengthBound.Positive, least: 2, most: 2);
        var pin = fields.OptionalLength("pin", LengthBound.Positive);
        var bush = fields.OptionalLength("bush", LengthBound.Positive);
        if (pin is not null && bush is not null)
        {
            fields.Faults.Add(fields.Part, Texts.Say("bench.measure-json.a-bore-has-either-pin"));
            return null;
        }

        return bore is null || mouth is null || deep is null
            ? null
            : new Measure.Bore(id, bore, mouth, deep, pin ?? bush, bush is null ? BoreMate.Pin : BoreMate.Bush);
    }

    private static Measure? ReadCentres(Fields fields, string id)
    {
        var (from, to) = Ends(fields);
        var values = Lengths(fields, "values", LengthBound.Positive, least: 1);
        var over = fields.RequiredWord("over", PartWordLists.Over);
        return from is null || to is null || values is null || over is not { } word
            ? null
            : new Measure.Centres(id, from, to, values, word);
    }

    private static Measure? ReadHeights(Fields fields, string id)
    {
        var face = Parts(fields, "face", least: 3)?.Select(p => ReadFaceHeight(fields.Item(p))).ToList();
        var places = Parts(fields, "places", least: 1)?.Select(p => ReadPlaceHeight(fields.Item(p))).ToList();
        return face is null || places is null || face.Contains(null) || places.Contains(null)
            ? null
            : new Measure.Heights(id, [.. face.OfType<FaceHeight>()], [.. places.OfType<PlaceHeight>()]);
    }

    private static FaceHeight? ReadFaceHeight(Fields fields)
    {
        var (x, y, height) = (
            fields.RequiredLength("x", LengthBound.Any),
            fields.RequiredLength("y", LengthBound.Any),
            fields.RequiredLength("height", LengthBound.Any)
        );
        fields.RefuseOthers();
        return x is not { } a || y is not { } b || height is not { } h ? null : new FaceHeight(a, b, h);
    }

    private static PlaceHeight? ReadPlaceHeight(Fields fields)
    {
        var dimension = fields.RequiredText("dimension");
        var (x, y, height) = (
            fields.RequiredLength("x", LengthBound.Any),
            fields.RequiredLength("y", LengthBound.Any),
            fields.RequiredLength("height", LengthBound.Any)
        );
        fields.RefuseOthers();
        return dimension is null || x is not { } a || y is not { } b || height is not { } h ? null : new PlaceHeight(dimension, a, b, h);
    }

    private static Measure? ReadStraightedge(Fields fields, string id)
    {
        var dimension = fields.RequiredText("dimension");
        var gaps = Parts(fields, "gaps", least: 3)?.Select(p => ReadGap(fields.Item(p))).ToList();
        return dimension is null || gaps is null || gaps.Contains(null)
            ? null
            : new Measure.Straightedge(id, dimension, [.. gaps.OfType<Gap>()]);
    }

    private static Gap? ReadGap(Fields fields)
    {
        var at = fields.RequiredLength("at");
        var gap = fields.OptionalLength("gap");
        var goes = fields.OptionalLength("goes");
        var stops = fields.OptionalLength("stops", LengthBound.Positive);
        var sheets = fields.Optional("sheets") is null ? null : fields.RequiredWhole("sheets", 0, 100);
        fields.RefuseOthers();
        bool Has(string name) => fields.Optional(name) is not null;
        var ways = (Has("gap") ? 1 : 0) + (Has("goes") || Has("stops") ? 1 : 0) + (Has("sheets") ? 1 : 0);
        if (ways != 1 || Has("goes") != Has("stops") || goes >= stops)
        {
            fields.Faults.Add(fields.Part, Texts.Say("bench.measure-json.a-gap-is-told-in"));
            return null;
        }

        return at is not { } place ? null
            : sheets is { } n ? Gap.OfPaper(place, n)
            : (gap ?? goes) is { } thickness && Has("stops") == stops is not null ? new Gap(place, thickness, stops)
            : null;
    }

    private static Measure? RefuseKind(Fields fields, JsonPart? kind)
    {
        if (kind is not null)
        {
            fields.Faults.Add(kind, Texts.Say("bench.measure-json.found-one-of-is-needed", kind.Describe(), Kinds));
        }

        return null;
    }

    private static (string? From, string? To) Ends(Fields fields)
    {
        var (from, to) = (fields.RequiredText("from"), fields.RequiredText("to"));
        if (from is not null && from == to)
        {
            fields.Faults.Add(fields.Part, Texts.Say("bench.measure-json.both-ends-are-this-goes", from));
            return (null, null);
        }

        return (from, to);
    }

    /// <summary>A list of lengths, or null with the fault recorded.</summary>
    private static IReadOnlyList<Length>? Lengths(Fields fields, string name, LengthBound bound, int least, int most = int.MaxValue)
    {
        var parts = Parts(fields, name, least, most);
        var lengths = parts?.Select(p => fields.Length(p, bound)).ToList();
        return lengths is null || lengths.Contains(null) ? null : [.. lengths.Select(l => l!.Value)];
    }

    private static IReadOnlyList<JsonPart>? Parts(Fields fields, string name, int least, int most = int.MaxValue)
    {
        if (fields.Required(name) is not { } part)
        {
            return null;
        }

        var items = fields.Items(name);
        if (part.Kind == JsonValueKind.Array && (items.Count < least || items.Count > most))
        {
            var needed = least == most ? $"{least}" : Texts.Say("bench.measure-json.at-least", least);
            fields.Faults.Add(part, Texts.Say("bench.measure-json.found-a-list-of-needed", items.Count, needed, least == 1 ? "is" : "are"));
        }

        return part.Kind == JsonValueKind.Array && items.Count >= least && items.Count <= most ? items : null;
    }
}
