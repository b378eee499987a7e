using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road.Json;

/// <summary>An adjuster in a car file.</summary>
internal static class AdjusterJson
{
    public static Adjuster? Read(Fields fields)
    {
        var id = fields.RequiredText("id");
        var kind = fields.RequiredWord("kind", RoadWords.AdjusterKinds);
        var side = fields.RequiredWord("side", RoadWords.Sides);
        var at = kind is AdjusterKind.TrackRod ? [] : ReadPlaces(fields);
        var least = fields.OptionalLength("least", LengthBound.Any);
        var most = fields.RequiredLength("most", LengthBound.NotNegative);
        var adjuster = new Adjuster(
            id ?? "",
            kind ?? AdjusterKind.Shims,
            side ?? Side.Left,
            at,
            kind is AdjusterKind.TrackRod
                ? AdjusterDirection.Out
                : fields.OptionalWord("direction", RoadWords.Directions) ?? AdjusterDirection.Out,
            least ?? Least(kind, most),
            most ?? Length.Zero,
            fields.OptionalLength("step", LengthBound.Positive),
            fields.OptionalLength("fitted", LengthBound.Any),
            fields.OptionalLength("usual", LengthBound.NotNegative),
            fields.OptionalText("note")
        );
        fields.RefuseOthers();
        if (adjuster.Least > adjuster.Most)
        {
            fields.Faults.Add(
                fields.Part,
                Texts.Say("road.adjuster-json.the-least-is-more-than", adjuster.Least.AsTyped, adjuster.Most.AsTyped)
            );
        }

        return id is null || kind is null || side is null || most is null ? null : adjuster;
    }

    public static void Write(Utf8JsonWriter json, Adjuster adjuster, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", adjuster.Id);
        json.WriteString("kind", RoadWords.AdjusterKinds.WordFor(adjuster.Kind));
        json.WriteString("side", RoadWords.Sides.WordFor(adjuster.Side));
        if (adjuster.Kind != AdjusterKind.TrackRod)
        {
            json.WriteStartArray("at");
            foreach (var place in adjuster.At)
            {
                json.WriteStringValue(RoadWords.Parts.WordFor(place));
            }

            json.WriteEndArray();
            json.WriteString("direction", RoadWords.Directions.WordFor(adjuster.Direction));
        }

        json.WriteOptional("least", adjuster.Least, units);
        json.WriteOptional("most", adjuster.Most, units);
        json.WriteOptional("step", adjuster.Step, units);
        json.WriteOptional("fitted", adjuster.Fitted, units);
        json.WriteOptional("usual", adjuster.Usual, units);
        json.WriteOptional("note", adjuster.Note);
        json.WriteEndObject();
    }

    // Shims begin at none; an eccentric or a screw goes as far the other way.
    private static Length Least(AdjusterKind? kind, Length? most) =>
        kind is AdjusterKind.Shims or null ? Length.Zero : -(most ?? Length.Zero);

    private static List<CornerPart> ReadPlaces(Fields fields)
    {
        var at = new List<CornerPart>();
        foreach (var part in fields.Items("at"))
        {
            if (
                part.Kind == JsonValueKind.String
                && RoadWords.Parts.TryGetValue(part.Text, out var place)
                && place <= CornerPart.TrackRodInner
            )
            {
                at.Add(place);
            }
            else
            {
                fields.Faults.Add(part, Texts.Say("road.adjuster-json.found-one-of-upperfront-upperrear", part.Describe()));
            }
        }

        if (at.Count == 0)
        {
            fields.Faults.Add(fields.Part, Texts.Say("road.adjuster-json.the-field-at-must-name"));
        }

        return at;
    }
}
