using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench.Json;

/// <summary>The parts section of a car file.</summary>
internal static class PartsJson
{
    public static PartsSection Read(Fields fields)
    {
        var items = fields.Items("items");
        var parts = PartJson.Once(fields, "items", PartJson.Read, p => p.Id);
        var variants = PartJson.Once(fields, "variants", VariantJson.Read, v => v.Id);
        fields.RefuseOthers();
        CheckMirrors(fields, items, parts);
        return new PartsSection(parts, variants);
    }

    public static void Write(Utf8JsonWriter json, PartsSection section, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteList("items", section.Items, p => PartJson.Write(json, p, units));
        json.WriteList("variants", section.Variants, v => VariantJson.Write(json, v, units));
        json.WriteEndObject();
    }

    // A partner may be missing (it is still on the car), but one that is here must be of the same kind and agree.
    private static void CheckMirrors(Fields fields, IReadOnlyList<JsonPart> items, IReadOnlyList<Part> parts)
    {
        var byId = parts.DistinctBy(p => p.Id).ToDictionary(p => p.Id, StringComparer.Ordinal);
        foreach (var item in items)
        {
            var id = item.Members.FirstOrDefault(m => m.Name == "id").Value?.Text;
            if (id is null || !byId.TryGetValue(id, out var part) || part.Mirror is not { } mirror)
            {
                continue;
            }

            if (mirror == id)
            {
                fields.Faults.Add(item, Texts.Say("bench.parts-json.part-is-its-own-mirror", id));
            }
            else if (byId.TryGetValue(mirror, out var partner) && (partner.Kind != part.Kind || (partner.Mirror is { } back && back != id)))
            {
                fields.Faults.Add(
                    item,
                    partner.Kind != part.Kind
                        ? Texts.Say("bench.parts-json.part-mirrors-which-is-of", id, mirror)
                        : Texts.Say("bench.parts-json.part-mirrors-but-mirrors-partners", id, mirror, partner.Mirror)
                );
            }
        }
    }
}
