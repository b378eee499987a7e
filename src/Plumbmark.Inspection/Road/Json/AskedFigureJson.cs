using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road.Json;

/// <summary>What the book asks of one angle or length, in a car file.</summary>
internal static class AskedFigureJson
{
    public static AskedFigure? Read(Fields fields)
    {
        var kind = fields.RequiredWord("figure", RoadWords.Figures);
        var diameter = fields.OptionalLength("diameter", LengthBound.Positive);
        var figure = new AskedFigure(
            kind ?? FigureKind.Camber,
            Amount(fields, "value", kind, diameter),
            Amount(fields, "limit", kind, diameter, mayBeNegative: false),
            Amount(fields, "least", kind, diameter),
            Amount(fields, "most", kind, diameter),
            fields.OptionalWord("source", LimitsJson.Sources) ?? LimitSource.Own,
            fields.OptionalText("note")
        );
        fields.RefuseOthers();
        if (diameter is not null && kind is not (null or FigureKind.ToeIn or FigureKind.RearToeIn))
        {
            fields.Faults.Add(fields.Optional("diameter")!, Texts.Say("road.asked-figure-json.a-diameter-belongs-to-toe"));
        }

        if (figure is { LeastSi: { } least, MostSi: { } most } && least > most)
        {
            fields.Faults.Add(fields.Part, Texts.Say("road.asked-figure-json.the-least-allowed-is-more"));
        }

        if (figure.Limit is not null && (figure.Least is not null || figure.Most is not null))
        {
            fields.Faults.Add(fields.Part, Texts.Say("road.asked-figure-json.give-either-limit-so-much"));
        }

        return kind is null ? null : figure;
    }

    public static void Write(Utf8JsonWriter json, AskedFigure figure, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("figure", RoadWords.Figures.WordFor(figure.Kind));
        WriteAmount(json, "value", figure.Value, units);
        WriteAmount(json, "limit", figure.Limit, units);
        WriteAmount(json, "least", figure.Least, units);
        WriteAmount(json, "most", figure.Most, units);
        var toe = new[] { figure.Value, figure.Limit, figure.Least, figure.Most }.OfType<FigureAmount.OfToe>().FirstOrDefault();
        json.WriteOptional("diameter", toe?.Diameter, units);
        json.WriteString("source", LimitsJson.Sources.WordFor(figure.Source));
        json.WriteOptional("note", figure.Note);
        json.WriteEndObject();
    }

    private static FigureAmount? Amount(Fields fields, string name, FigureKind? kind, Length? diameter, bool mayBeNegative = true)
    {
        var bound = mayBeNegative ? LengthBound.Any : LengthBound.NotNegative;
        if (kind is not { } known)
        {
            fields.Optional(name);
            return null;
        }

        if (diameter is { } across)
        {
            var length = fields.OptionalLength(name, bound);
            if (length is { } long_ && long_.Abs() >= across)
            {
                fields.Faults.Add(
                    fields.Optional(name)!,
                    Texts.Say("road.asked-figure-json.toe-of-on-a-diameter", long_.AsTyped, across.AsTyped)
                );
                return null;
            }

            return length is { } toe ? new FigureAmount.OfToe(toe, across) : null;
        }

        if (RoadFigures.UnitOf(known) == FigureUnit.Length)
        {
            return fields.OptionalLength(name, bound) is { } length ? new FigureAmount.OfLength(length) : null;
        }

        return fields.OptionalAngle(name, mayBeNegative) is { } angle ? new FigureAmount.OfAngle(angle) : null;
    }

    private static void WriteAmount(Utf8JsonWriter json, string name, FigureAmount? amount, LengthUnit units)
    {
        switch (amount)
        {
            case FigureAmount.OfAngle a:
                json.WriteOptional(name, (Angle?)a.Angle);
                break;
            case FigureAmount.OfLength l:
                json.WriteOptional(name, l.Length, units);
                break;
            case FigureAmount.OfToe t:
                json.WriteOptional(name, t.BehindMinusAhead, units);
                break;
        }
    }
}
