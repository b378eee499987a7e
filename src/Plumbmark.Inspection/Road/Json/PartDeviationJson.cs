using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road.Json;

/// <summary>A part found off its drawing, in a car file.</summary>
internal static class PartDeviationJson
{
    public static PartDeviation? Read(Fields fields)
    {
        var id = fields.RequiredText("id");
        var part = fields.RequiredWord("part", RoadWords.Parts);
        var side = fields.RequiredWord("side", RoadWords.Sides);
        var amounts = part is { } known ? Amounts(fields, known) : [];
        var deviation = new PartDeviation(
            id ?? "",
            part ?? CornerPart.Lever,
            side ?? Side.Left,
            amounts,
            fields.OptionalLength("sigma", LengthBound.Positive),
            fields.OptionalAngle("sigmaAngle", mayBeNegative: false),
            fields.OptionalText("note"),
            fields.OptionalText("withdrawn")
        );
        if (part is not null)
        {
            fields.RefuseOthers();
        }

        if (part is { } told && amounts.Count == 0)
        {
            var allowed = string.Join(", ", RoadWords.AmountsOf(told).Select(a => a.Field));
            fields.Faults.Add(fields.Part, Texts.Say("road.part-deviation-json.no-amount-is-given-give", allowed));
        }

        return id is null || part is null || side is null ? null : deviation;
    }

    public static void Write(Utf8JsonWriter json, PartDeviation deviation, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", deviation.Id);
        json.WriteString("part", RoadWords.Parts.WordFor(deviation.Part));
        json.WriteString("side", RoadWords.Sides.WordFor(deviation.Side));
        foreach (var amount in deviation.Amounts)
        {
            var field = RoadWords.AmountsOf(deviation.Part).First(a => a.Quantity == amount.Quantity).Field;
            json.WriteOptional(field, amount.Angle);
            json.WriteOptional(field, amount.Length, units);
        }

        json.WriteOptional("sigma", deviation.Sigma, units);
        json.WriteOptional("sigmaAngle", deviation.SigmaAngle);
        json.WriteOptional("note", deviation.Note);
        json.WriteOptional("withdrawn", deviation.Withdrawn);
        json.WriteEndObject();
    }

    private static List<PartDeviation.Amount> Amounts(Fields fields, CornerPart part)
    {
        var amounts = new List<PartDeviation.Amount>();
        foreach (var (field, quantity) in RoadWords.AmountsOf(part))
        {
            var (length, angle) = RoadWords.IsAngle(quantity)
                ? ((Length?)null, fields.OptionalAngle(field))
                : (fields.OptionalLength(field, LengthBound.Any), null);
            if (length is null && angle is null)
            {
                continue;
            }

            if (amounts.Any(a => RoadParameters.Of(Side.Left, part, a.Quantity) == RoadParameters.Of(Side.Left, part, quantity)))
            {
                fields.Faults.Add(fields.Part, Texts.Say("road.part-deviation-json.an-arm-is-either-in"));
            }
            else
            {
                amounts.Add(new(quantity, length, angle));
            }
        }

        return amounts;
    }
}
