using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Json;

/// <summary>A book page in a file. A page says its own unit, because pages from two books lie in one file.</summary>
internal static class PageJson
{
    private const int FewestParts = 2;

    public static BookPage? Read(Fields outer)
    {
        var unitPart = outer.Part.Members.FirstOrDefault(m => m.Name == "units").Value;
        // A page without a readable unit is refused; read as inches meanwhile, which take fractions too, it tells no faults that follow from that.
        var units = unitPart is not null && CarFileReader.Units.TryGetValue(unitPart.Text, out var known) ? known : LengthUnit.Inch;
        // The outer reading has told its faults already where this is no group.
        return outer.Part.Kind == JsonValueKind.Object ? ReadIn(outer.In(units), units) : null;
    }

    public static void Write(Utf8JsonWriter json, BookPage page)
    {
        json.WriteStartObject();
        json.WriteString("id", page.Id);
        json.WriteString("title", page.Title);
        json.WriteString("units", CarFileReader.Units.WordFor(page.Units));
        SourceJson.Write(json, page.Source);
        if (!page.AppliesTo.IsEveryCar)
        {
            AppliesToJson.Write(json, page.AppliesTo);
        }

        json.WriteList("dimensions", page.Dimensions, d => DimensionJson.Write(json, d, page.Units));
        json.WriteList("chains", page.Chains, c => WriteChain(json, c));
        json.WriteOptional("note", page.Note);
        json.WriteEndObject();
    }

    private static BookPage? ReadIn(Fields fields, LengthUnit units)
    {
        var id = fields.RequiredText("id");
        fields.RequiredWord("units", CarFileReader.Units);
        var page = new BookPage(id ?? "", fields.OptionalText("title") ?? id ?? "", units)
        {
            Source = fields.Group("source") is { } source ? SourceJson.Read(source) : BookSource.Unknown,
            AppliesTo = fields.Group("appliesTo") is { } applies ? AppliesToJson.Read(applies) : AppliesTo.EveryCar,
            Dimensions = PartJson.Once(fields, "dimensions", DimensionJson.Read, d => d.Id),
            Chains = fields.List("chains", p => ReadChain(fields.Item(p))),
            Note = fields.OptionalText("note"),
        };
        fields.RefuseOthers();
        CheckNames(fields, page);
        return id is null ? null : page;
    }

    private static BookChain? ReadChain(Fields fields)
    {
        var total = fields.RequiredText("total");
        var parts = PartJson.Texts(fields, "parts");
        fields.RefuseOthers();
        if (parts.Count < FewestParts)
        {
            fields.Faults.Add(fields.Part, Language.Texts.Say("book.page-json.a-chain-of-has-nothing", parts.Count));
        }

        return total is null || parts.Count < FewestParts ? null : new BookChain(total, parts);
    }

    private static void WriteChain(Utf8JsonWriter json, BookChain chain)
    {
        json.WriteStartObject();
        json.WriteString("total", chain.Total);
        json.WriteList("parts", chain.Parts, json.WriteStringValue);
        json.WriteEndObject();
    }

    // Names are looked up among the ids as written, so that a figure refused for another fault is not told as missing besides.
    private static void CheckNames(Fields fields, BookPage page)
    {
        var items = fields.Items("dimensions");
        var known = items
            .Select(d => d.Members.FirstOrDefault(m => m.Name == "id").Value?.Text)
            .OfType<string>()
            .ToHashSet(StringComparer.Ordinal);
        foreach (var item in items)
        {
            var own = item.Members.FirstOrDefault(m => m.Name == "id").Value?.Text;
            var named = item.Members.FirstOrDefault(m => m.Name == "mustEqual").Value?.Items ?? [];
            foreach (var part in named.Where(p => !known.Contains(p.Text) || p.Text == own))
            {
                fields.Faults.Add(
                    part,
                    part.Text == own
                        ? Language.Texts.Say("book.page-json.figure-must-equal-itself-name", own)
                        : Language.Texts.Say("book.page-json.the-figure-is-not-on", part.Text, page.Id)
                );
            }
        }

        foreach (var chain in fields.Items("chains"))
        {
            var named = chain.Members.Where(m => m.Name == "total").Select(m => m.Value);
            var parts = chain.Members.Where(m => m.Name == "parts").SelectMany(m => m.Value.Items);
            foreach (var part in named.Concat(parts).Where(p => p.Kind == JsonValueKind.String && !known.Contains(p.Text)))
            {
                fields.Faults.Add(part, Language.Texts.Say("book.page-json.the-figure-is-not-on", part.Text, page.Id));
            }
        }
    }
}
