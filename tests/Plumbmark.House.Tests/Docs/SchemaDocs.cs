using System.Text;
using System.Text.Json;
using Plumbmark.Testing;

namespace Plumbmark.House.Tests.Docs;

/// <summary>docs/formats lists every field of the schemas with its unit, written from the schemas themselves.</summary>
public class SchemaDocs
{
    private static readonly Dictionary<string, string> s_units = new(StringComparer.Ordinal)
    {
        ["length"] = "length, in the file's `units` or as written",
        ["optionalLength"] = "length, in the file's `units` or as written; may be null",
        ["lengths"] = "list of lengths",
        ["twoLengths"] = "two lengths",
        ["place"] = "three lengths: forward, left, up; each may be null",
        ["name"] = "text",
        ["optionalText"] = "text; may be null",
        ["amount"] = "length, angle (\"7.5 deg\") or rate (\"180 lbf/in\", \"31.5 N/mm\")",
        ["optionalAmount"] = "length, angle or rate with its unit; may be null",
        ["wheelAngle"] = "degrees, or degrees and minutes as text",
        ["optionalWheelAngle"] = "degrees, or degrees and minutes as text; may be null",
        ["partAngle"] = "degrees",
        ["figureAmount"] = "degrees for an angle; a length for wheelbase, track, ride height, and toe with a diameter",
        ["optionalNumber"] = "number without a unit; may be null",
        ["pickUp"] = "name of a pair of points, or a place",
    };

    [Theory]
    [InlineData("car", "Car file")]
    [InlineData("book", "Book file")]
    public void Fields_AreThoseOfTheSchema(string name, string title)
    {
        using var schema = JsonDocument.Parse(File.ReadAllText(Repository.PathTo("schemas", $"{name}.schema.json")));
        var text = new StringBuilder(
            $"# {title}: every field\n\nWritten from `schemas/{name}.schema.json` by a test. A name in the column *what* is a section of this page.\n\n"
        );
        Section(text, "the file", schema.RootElement);
        foreach (var definition in schema.RootElement.GetProperty("$defs").EnumerateObject().Where(d => HasFields(d.Value)))
        {
            Section(text, definition.Name, definition.Value);
        }

        House.MatchesFile(text.ToString().TrimEnd('\n') + "\n", "docs", "formats", $"{name}-fields.md");
    }

    private static bool HasFields(JsonElement schema) => Branches(schema).Any(b => b.TryGetProperty("properties", out _));

    private static void Section(StringBuilder text, string title, JsonElement schema)
    {
        text.Append($"## {title}\n\n");
        if (schema.TryGetProperty("description", out var about))
        {
            text.Append(about.GetString()).Append("\n\n");
        }

        text.Append("| field | what | remark |\n|---|---|---|\n");
        var rows = new HashSet<string>(StringComparer.Ordinal);
        foreach (var branch in Branches(schema))
        {
            Rows(text, rows, "", branch);
        }

        text.Append('\n');
    }

    private static void Rows(StringBuilder text, HashSet<string> rows, string prefix, JsonElement schema)
    {
        if (!schema.TryGetProperty("properties", out var properties))
        {
            return;
        }

        foreach (var field in properties.EnumerateObject().Where(f => f.Value.ValueKind == JsonValueKind.Object))
        {
            var remark = field.Value.TryGetProperty("description", out var d)
                ? d.GetString()!.Replace("|", "\\|", StringComparison.Ordinal)
                : "";
            var row = $"| `{prefix}{field.Name}` | {Kind(field.Value)} | {remark} |\n";
            if (rows.Add(row))
            {
                text.Append(row);
            }

            Rows(text, rows, $"{prefix}{field.Name}.", field.Value);
            if (field.Value.TryGetProperty("items", out var items) && items.ValueKind == JsonValueKind.Object)
            {
                Rows(text, rows, $"{prefix}{field.Name}[].", items);
            }
        }
    }

    // An object's fields may stand in the conditions of its cases.
    private static IEnumerable<JsonElement> Branches(JsonElement schema)
    {
        yield return schema;
        foreach (var word in new[] { "allOf", "anyOf", "oneOf" })
        {
            if (schema.TryGetProperty(word, out var cases))
            {
                foreach (var one in cases.EnumerateArray().Where(c => c.ValueKind == JsonValueKind.Object))
                {
                    foreach (var inner in Branches(one.TryGetProperty("then", out var then) ? then : one))
                    {
                        yield return inner;
                    }
                }
            }
        }
    }

    private static string Kind(JsonElement field)
    {
        if (field.TryGetProperty("$ref", out var reference))
        {
            var name = reference.GetString()!.Split('/')[^1];
            return s_units.GetValueOrDefault(name, name);
        }

        if (field.TryGetProperty("const", out var constant))
        {
            return $"`{constant}`";
        }

        if (field.TryGetProperty("enum", out var words))
        {
            return string.Join(", ", words.EnumerateArray().Select(w => w.ValueKind == JsonValueKind.Null ? "null" : $"`{w}`"));
        }

        if (field.TryGetProperty("items", out var items) && items.ValueKind == JsonValueKind.Object)
        {
            return $"list of {Kind(items)}";
        }

        foreach (var choice in new[] { "anyOf", "oneOf" })
        {
            if (field.TryGetProperty(choice, out var cases))
            {
                return string.Join(" or ", cases.EnumerateArray().Select(Kind).Distinct(StringComparer.Ordinal));
            }
        }

        return field.TryGetProperty("type", out var type)
            ? type.ValueKind == JsonValueKind.Array
                ? string.Join(" or ", type.EnumerateArray().Select(t => t.GetString()))
                : type.GetString()!
            : "any";
    }
}
