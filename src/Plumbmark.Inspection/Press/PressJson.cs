using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Press;

/// <summary>A press job in a car file.</summary>
internal static class PressJson
{
    public static PressJob? Read(Fields fields)
    {
        var id = fields.RequiredText("id");
        var part = ReadPart(fields);
        var section = fields.Group("section") is { } s ? PressSectionJson.Read(s) : null;
        var lines = fields.List("lines", p => PressMeasureJson.ReadLine(fields.Item(p)));
        var winding = fields.List("winding", p => PressMeasureJson.ReadWinding(fields.Item(p)));
        var outBy = fields.Items("outBy").Select(p => fields.Length(p, LengthBound.NotNegative)).OfType<Length>().ToList();
        var setUp = fields.Group("setUp") is { } u ? PressMeasureJson.ReadSetUp(u) : null;
        var limits = fields.Group("limits") is { } l ? PressMeasureJson.ReadLimits(l) : PressLimits.Usual;
        var bites = fields.List("bites", p => BiteJson.Read(fields.Item(p)));
        var tests = fields.List("crackTests", p => BiteJson.ReadTest(fields.Item(p)));
        var note = fields.OptionalText("note");
        fields.RefuseOthers();
        RefuseTwice(fields, bites.Select(b => b.Id), "bite");
        RefuseTwice(fields, tests.Select(t => t.Id), Texts.Say("press.json.crack-test"));
        foreach (var unknown in tests.Select(t => t.AfterBite).OfType<string>().Where(b => bites.All(x => x.Id != b)).Distinct())
        {
            fields.Faults.Add(fields.Part, Texts.Say("press.json.a-crack-test-was-made", unknown));
        }

        return id is null || part is null
            ? null
            : new PressJob(id, part)
            {
                Section = section,
                Lines = lines,
                Winding = winding,
                OutBy = outBy,
                SetUp = setUp,
                Limits = limits,
                Bites = bites,
                CrackTests = tests,
                Note = note,
            };
    }

    public static void Write(Utf8JsonWriter json, PressJob job, LengthUnit units)
    {
        json.WriteStartObject();
        json.WriteString("id", job.Id);
        WritePart(json, job.Part, units);
        if (job.Section is { } section)
        {
            json.WritePropertyName("section");
            PressSectionJson.Write(json, section, units);
        }

        json.WriteList("lines", job.Lines, line => PressMeasureJson.WriteLine(json, line, units));
        json.WriteList("winding", job.Winding, reading => PressMeasureJson.WriteWinding(json, reading, units));
        json.WriteList("outBy", job.OutBy, length => LengthPart.Write(json, length, units));
        if (job.SetUp is { } setUp)
        {
            json.WritePropertyName("setUp");
            PressMeasureJson.WriteSetUp(json, setUp, units);
        }

        if (job.Limits != PressLimits.Usual)
        {
            json.WritePropertyName("limits");
            PressMeasureJson.WriteLimits(json, job.Limits, units);
        }

        json.WriteList("bites", job.Bites, bite => BiteJson.Write(json, bite, units));
        json.WriteList("crackTests", job.CrackTests, test => BiteJson.WriteTest(json, test));
        json.WriteOptional("note", job.Note);
        json.WriteEndObject();
    }

    private static PressPart? ReadPart(Fields fields)
    {
        if (fields.Required("part") is not { } part)
        {
            return null;
        }

        var inside = fields.Item(part);
        var name = inside.RequiredText("name");
        var (kind, make, material) = (
            inside.OptionalWord("kind", PressWordLists.Kinds),
            inside.OptionalWord("make", PressWordLists.Makes),
            inside.OptionalWord("material", PressWordLists.Materials)
        );
        var length = inside.OptionalLength("length", LengthBound.Positive);
        var history = inside.Group("history") is { } h ? ReadHistory(h) : new PartHistory();
        inside.RefuseOthers();
        return name is null ? null : new PressPart(name, kind, make, material, length, history);
    }

    private static PartHistory ReadHistory(Fields fields)
    {
        var history = new PartHistory(
            fields.OptionalWord("cracked", PressWordLists.Answers),
            fields.OptionalWord("kinked", PressWordLists.Answers),
            fields.OptionalWord("torn", PressWordLists.Answers),
            fields.OptionalWord("corroded", PressWordLists.Answers),
            fields.OptionalWord("welded", PressWordLists.Answers),
            fields.OptionalWord("heated", PressWordLists.Answers),
            fields.OptionalWord("pressedBefore", PressWordLists.Answers)
        );
        fields.RefuseOthers();
        return history;
    }

    private static void WritePart(Utf8JsonWriter json, PressPart part, LengthUnit units)
    {
        json.WriteStartObject("part");
        json.WriteString("name", part.Name);
        json.WriteOptional("kind", PressWordLists.Kinds, part.Kind);
        json.WriteOptional("make", PressWordLists.Makes, part.Make);
        json.WriteOptional("material", PressWordLists.Materials, part.Material);
        json.WriteOptional("length", part.Length, units);
        if (part.History != new PartHistory())
        {
            json.WriteStartObject("history");
            json.WriteOptional("cracked", PressWordLists.Answers, part.History.Cracked);
            json.WriteOptional("kinked", PressWordLists.Answers, part.History.Kinked);
            json.WriteOptional("torn", PressWordLists.Answers, part.History.Torn);
            json.WriteOptional("corroded", PressWordLists.Answers, part.History.Corroded);
            json.WriteOptional("welded", PressWordLists.Answers, part.History.Welded);
            json.WriteOptional("heated", PressWordLists.Answers, part.History.Heated);
            json.WriteOptional("pressedBefore", PressWordLists.Answers, part.History.PressedBefore);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void RefuseTwice(Fields fields, IEnumerable<string> ids, string what)
    {
        foreach (var twice in ids.GroupBy(i => i, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            fields.Faults.Add(fields.Part, Texts.Say("press.json.the-id-names-more-than", twice.Key, what));
        }
    }
}
