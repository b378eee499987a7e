using System.Text.Json;
using System.Text.Json.Nodes;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Road;

/// <summary>
/// Turns a form into an act by writing it as the journal would and reading that back, so that a form and a car file obey the same rules and say the same sentences. A fault goes to the
/// field it belongs to.
/// </summary>
internal static class FormAct
{
    /// <summary>The act of a form; null with the faults recorded.</summary>
    /// <param name="request">The request with the form.</param>
    /// <param name="act">The act's name.</param>
    /// <param name="path">Where the form's fields stand in the act, such as <c>road.front</c>; indexes are not needed.</param>
    /// <param name="fields">The form's fields.</param>
    /// <param name="fixedFields">What is not asked but belongs there: an id, a kind.</param>
    /// <param name="faults">Where faults go.</param>
    public static Act? Read(
        PageRequest request,
        LengthUnit units,
        string act,
        string path,
        IReadOnlyList<FormField> fields,
        IEnumerable<(string Name, string Value)> fixedFields,
        FieldFaults faults
    )
    {
        var group = new JsonObject();
        foreach (var (name, value) in fixedFields)
        {
            group[name] = value;
        }

        foreach (var field in fields)
        {
            Put(group, field, request, faults);
        }

        var whole = new JsonObject { ["act"] = act, ["units"] = units == LengthUnit.Inch ? "in" : "mm" };
        Place(whole, path, group);
        var found = new Faults();
        var read = faults.Any ? null : ActJson.Read(JsonSerializer.SerializeToUtf8Bytes(whole), found);
        foreach (var fault in found)
        {
            faults.Add(FieldOf(fault.Path, fields), fault.Sentence);
        }

        return read;
    }

    /// <summary>Where a fault that belongs to no one field is shown.</summary>
    public const string WholeForm = "";

    private static void Put(JsonObject group, FormField field, PageRequest request, FieldFaults faults)
    {
        var text = request.Field(field.Name);
        if (text.Length == 0)
        {
            if (field.IsRequired)
            {
                faults.Add(field.Name, Say("road.form.nothing-is-written-here"));
            }

            return;
        }

        var (home, name) = HomeOf(group, field.Name);
        home[name] = field.Kind switch
        {
            FormField.Holds.Truth => JsonValue.Create(text == "yes"),
            FormField.Holds.Several => new JsonArray([.. text.Split(',').Select(t => (JsonNode)t.Trim())]),
            FormField.Holds.ThreeLengths => PlaceOf(text, field.Name, faults),
            FormField.Holds.PairOrPlace when text.Contains(',', StringComparison.Ordinal) => PlaceOf(text, field.Name, faults),
            _ => text,
        };
    }

    private static (JsonObject Home, string Name) HomeOf(JsonObject group, string name)
    {
        var point = name.IndexOf('.', StringComparison.Ordinal);
        if (point < 0)
        {
            return (group, name);
        }

        var inner = group[name[..point]] as JsonObject;
        if (inner is null)
        {
            inner = [];
            group[name[..point]] = inner;
        }

        return (inner, name[(point + 1)..]);
    }

    private static JsonArray? PlaceOf(string text, string field, FieldFaults faults)
    {
        var parts = text.Split(',').Select(p => p.Trim()).ToList();
        if (parts.Count != 3)
        {
            faults.Add(field, Say("road.form.found-figures-three-are", parts.Count));
            return null;
        }

        return [.. parts.Select(p => p.Length == 0 ? null : (JsonNode)p)];
    }

    private static void Place(JsonObject whole, string path, JsonObject group)
    {
        var at = whole;
        var steps = path.Split('.');
        foreach (var step in steps[..^1])
        {
            var next = new JsonObject();
            at[step] = next;
            at = next;
        }

        // A list of one: what a section keeps several of.
        at[steps[^1].TrimEnd('[', ']')] = steps[^1].EndsWith("[]", StringComparison.Ordinal) ? new JsonArray(group) : group;
    }

    // The longest field name that the fault's path ends with, indexes apart.
    private static string FieldOf(string path, IReadOnlyList<FormField> fields)
    {
        var plain = string.Concat(path.Split('[', ']').Where((_, i) => i % 2 == 0));
        return fields
                .Where(f => plain.EndsWith($".{f.Name}", StringComparison.Ordinal))
                .OrderByDescending(f => f.Name.Length)
                .FirstOrDefault()
                ?.Name
            ?? WholeForm;
    }
}
