using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Press;

/// <summary>Bites and crack tests in a car file.</summary>
internal static class BiteJson
{
    private const double LongestDwellSeconds = 86_400;

    public static BiteRecord? Read(Fields fields)
    {
        var id = fields.RequiredText("id");
        var travel = fields.RequiredLength("travel", LengthBound.Positive);
        var (left, set) = (fields.OptionalLength("left", LengthBound.Any), fields.OptionalLength("set", LengthBound.Any));
        if (left is null == set is null)
        {
            fields.Faults.Add(fields.Part, Texts.Say("press.bite-json.a-bite-needs-what-was"));
        }

        var later = fields.OptionalLength("leftLater", LengthBound.Any);
        var (load, dwell) = (fields.OptionalNumber("load", 0), fields.OptionalNumber("dwell", 0, LongestDwellSeconds));
        var signs = fields.Items("signs").Select(part => ReadSign(part, fields.Faults)).OfType<BiteSign>().Distinct().ToList();
        var (note, withdrawn) = (fields.OptionalText("note"), fields.OptionalText("withdrawn"));
        fields.RefuseOthers();
        return id is null || travel is null
            ? null
            : new BiteRecord(id, travel.Value)
            {
                Left = left,
                Set = set,
                LeftLater = later,
                Load = load,
                DwellSeconds = dwell,
                Signs = signs,
                Note = note,
                Withdrawn = withdrawn,
            };
    }

    public static void Write(Utf8JsonWriter json, BiteRecord bite, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", bite.Id);
        json.WriteOptional("travel", bite.Travel, units);
        json.WriteOptional("left", bite.Left, units);
        json.WriteOptional("set", bite.Set, units);
        json.WriteOptional("leftLater", bite.LeftLater, units);
        json.WriteOptional("load", bite.Load);
        json.WriteOptional("dwell", bite.DwellSeconds);
        json.WriteList("signs", bite.Signs, sign => json.WriteStringValue(PressWordLists.Signs.WordFor(sign)));
        json.WriteOptional("note", bite.Note);
        json.WriteOptional("withdrawn", bite.Withdrawn);
        json.WriteEndObject();
    }

    public static CrackTest? ReadTest(Fields fields)
    {
        var id = fields.RequiredText("id");
        var method = fields.RequiredWord("method", PressWordLists.Methods);
        var found = fields.RequiredWord("found", PressWordLists.Answers);
        var (after, note) = (fields.OptionalText("afterBite"), fields.OptionalText("note"));
        fields.RefuseOthers();
        return id is null || method is null || found is null ? null : new CrackTest(id, method.Value, found == Answer.Yes, after, note);
    }

    public static void WriteTest(Utf8JsonWriter json, CrackTest test)
    {
        json.WriteStartObject();
        json.WriteString("id", test.Id);
        json.WriteString("method", PressWordLists.Methods.WordFor(test.Method));
        json.WriteString("found", PressWordLists.Answers.WordFor(test.Found ? Answer.Yes : Answer.No));
        json.WriteOptional("afterBite", test.AfterBite);
        json.WriteOptional("note", test.Note);
        json.WriteEndObject();
    }

    private static BiteSign? ReadSign(JsonPart part, Faults faults)
    {
        if (part.Kind == JsonValueKind.String && PressWordLists.Signs.TryGetValue(part.Text, out var sign))
        {
            return sign;
        }

        faults.Add(
            part,
            Texts.Say("press.bite-json.found-one-of-is-needed", part.Describe(), string.Join(", ", PressWordLists.Signs.Keys))
        );
        return null;
    }
}
