using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench.Json;

/// <summary>A loose part in a car file.</summary>
internal static class PartJson
{
    public static Part? Read(Fields fields)
    {
        var id = fields.RequiredText("id");
        var kind = fields.RequiredWord("kind", PartWordLists.Kinds);
        var part = new Part(
            id ?? "",
            kind ?? PartKind.Own,
            fields.OptionalWord("made", PartWordLists.Makes),
            fields.OptionalText("mirror"),
            fields.Group("card") is { } card ? ReadCard(card) : null,
            Conditions(fields),
            ClearBy(fields),
            Once(fields, "measures", MeasureJson.Read, m => m.Id),
            [.. fields.List("limits", p => ReadLimit(fields.Item(p)))]
        );
        fields.RefuseOthers();
        return id is null || kind is null ? null : part;
    }

    public static void Write(Utf8JsonWriter json, Part part, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", part.Id);
        json.WriteString("kind", PartWordLists.Kinds.WordFor(part.Kind));
        json.WriteOptional("made", part.Make is { } make ? PartWordLists.Makes.WordFor(make) : null);
        json.WriteOptional("mirror", part.Mirror);
        WriteCard(json, part.Card);
        json.WriteList("condition", part.Conditions, c => json.WriteStringValue(PartWordLists.Conditions.WordFor(c)));
        json.WriteOptional("crackTest", part.ClearBy is { } method ? PartWordLists.ClearBy.WordFor(method) : null);
        json.WriteList("measures", part.Measures, m => MeasureJson.Write(json, m, units));
        json.WriteList("limits", part.Limits, l => WriteLimit(json, l, units));
        json.WriteEndObject();
    }

    /// <summary>The items of a list; an id used twice is a fault.</summary>
    internal static IReadOnlyList<T> Once<T>(Fields fields, string name, Func<Fields, T?> read, Func<T, string> idOf)
        where T : class
    {
        var items = new List<T>();
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var part in fields.Items(name))
        {
            if (read(fields.Item(part)) is not { } item)
            {
                continue;
            }

            items.Add(item);
            if (!lines.TryAdd(idOf(item), part.Line))
            {
                fields.Faults.Add(part, Language.Texts.Say("bench.part-json.the-id-is-already-used", idOf(item), lines[idOf(item)]));
            }
        }

        return items;
    }

    private static CrackMethod? ClearBy(Fields fields) =>
        fields.Optional("crackTest") is { Kind: JsonValueKind.String, Text: PartWordLists.NoCrackTest }
            ? null
            : fields.OptionalWord("crackTest", PartWordLists.ClearBy);

    private static List<PartCondition> Conditions(Fields fields)
    {
        var seen = new List<PartCondition>();
        foreach (var part in fields.Items("condition"))
        {
            if (part.Kind == JsonValueKind.String && PartWordLists.Conditions.TryGetValue(part.Text, out var condition))
            {
                seen.Add(condition);
            }
            else
            {
                fields.Faults.Add(
                    part,
                    Language.Texts.Say(
                        "bench.part-json.found-one-of-is-needed",
                        part.Describe(),
                        string.Join(", ", PartWordLists.Conditions.Keys)
                    )
                );
            }
        }

        return [.. seen.Distinct()];
    }

    private static PartCard ReadCard(Fields fields)
    {
        var card = new PartCard(
            fields.OptionalText("name"),
            [.. fields.List("numbers", p => ReadNumber(fields.Item(p)))],
            fields.OptionalText("source"),
            Texts(fields, "photos"),
            Texts(fields, "history")
        );
        fields.RefuseOthers();
        return card;
    }

    private static CardNumber? ReadNumber(Fields fields)
    {
        var text = fields.RequiredText("number");
        var how = fields.OptionalWord("how", PartWordLists.Marks) ?? NumberMark.Unknown;
        fields.RefuseOthers();
        return text is null ? null : new CardNumber(text, how);
    }

    internal static List<string> Texts(Fields fields, string name)
    {
        var texts = new List<string>();
        foreach (var part in fields.Items(name))
        {
            if (part.Kind == JsonValueKind.String && !string.IsNullOrWhiteSpace(part.Text))
            {
                texts.Add(part.Text);
            }
            else
            {
                fields.Faults.Add(part, Language.Texts.Say("bench.part-json.found-a-text-that-is", part.Describe()));
            }
        }

        return texts;
    }

    private static PartLimit? ReadLimit(Fields fields)
    {
        var dimension = fields.RequiredText("dimension");
        var within = AmountPart.Required(fields, "within");
        var limit = new PartLimit(
            dimension ?? "",
            within ?? new Amount.OfAngle(1),
            fields.OptionalWord("source", LimitsJson.Sources) ?? LimitSource.Own,
            fields.OptionalText("note")
        );
        fields.RefuseOthers();
        if (within is not null && within.Si <= 0)
        {
            fields.Faults.Add(fields.Optional("within")!, Language.Texts.Say("bench.part-json.a-limit-is-greater-than"));
        }

        return dimension is null || within is null ? null : limit;
    }

    private static void WriteCard(Utf8JsonWriter json, PartCard card)
    {
        if (card.Name is null && card.Source is null && card.Numbers.Count + card.Photos.Count + card.History.Count == 0)
        {
            return;
        }

        json.WriteStartObject("card");
        json.WriteOptional("name", card.Name);
        json.WriteList("numbers", card.Numbers, n => WriteNumber(json, n));
        json.WriteOptional("source", card.Source);
        json.WriteList("photos", card.Photos, json.WriteStringValue);
        json.WriteList("history", card.History, json.WriteStringValue);
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, CardNumber number)
    {
        json.WriteStartObject();
        json.WriteString("number", number.Text);
        if (number.How != NumberMark.Unknown)
        {
            json.WriteString("how", PartWordLists.Marks.WordFor(number.How));
        }

        json.WriteEndObject();
    }

    private static void WriteLimit(Utf8JsonWriter json, PartLimit limit, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("dimension", limit.Dimension);
        AmountPart.Write(json, "within", limit.Within, units);
        json.WriteString("source", LimitsJson.Sources.WordFor(limit.Source));
        json.WriteOptional("note", limit.Note);
        json.WriteEndObject();
    }
}
