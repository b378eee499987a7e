using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road.Json;

/// <summary>Places in the road section: three lengths, forward, left, up; and pick-ups, which are a pair's name or such a place.</summary>
internal static class PlaceFields
{
    public static Place? OptionalPlace(this Fields fields, string name) => fields.Optional(name) is { } part ? Read(fields, part) : null;

    public static PickUp? OptionalPickUp(this Fields fields, string name)
    {
        if (fields.Optional(name) is not { } part)
        {
            return null;
        }

        if (part.Kind != JsonValueKind.String)
        {
            return Read(fields, part) is { } place ? new PickUp.AtPlace(place) : null;
        }

        if (!string.IsNullOrWhiteSpace(part.Text))
        {
            return new PickUp.AtPair(part.Text);
        }

        fields.Faults.Add(part, Texts.Say("road.place-fields.found-a-pairs-name-without", part.Describe()));
        return null;
    }

    public static void WriteOptional(this Utf8JsonWriter json, string name, PickUp? pickUp, LengthUnit units) =>
        _ = pickUp?.Match<object?>(
            pair =>
            {
                json.WriteString(name, pair.Name);
                return null;
            },
            place =>
            {
                json.WriteOptional(name, place.Place, units);
                return null;
            }
        );

    public static void WriteOptional(this Utf8JsonWriter json, string name, Place? place, LengthUnit units)
    {
        if (place is null)
        {
            return;
        }

        json.WriteStartArray(name);
        LengthPart.Write(json, place.X, units);
        LengthPart.Write(json, place.Y, units);
        LengthPart.Write(json, place.Z, units);
        json.WriteEndArray();
    }

    private static Place? Read(Fields fields, JsonPart part)
    {
        if (part.Kind != JsonValueKind.Array || part.Items.Count != 3)
        {
            var found = part.Kind == JsonValueKind.Array ? Texts.Say("road.place-fields.a-list-of", part.Items.Count) : part.Describe();
            fields.Faults.Add(part, Texts.Say("road.place-fields.found-a-list-of-three", found));
            return null;
        }

        var xyz = part.Items.Select(i => i.Kind == JsonValueKind.Null ? null : fields.Length(i, LengthBound.Any)).ToArray();
        return new Place(xyz[0], xyz[1], xyz[2]);
    }
}
