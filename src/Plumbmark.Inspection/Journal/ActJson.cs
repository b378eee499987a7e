using System.Buffers;
using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Book.Json;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Floor.Levelling;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Press;
using Plumbmark.Inspection.Road.Json;

namespace Plumbmark.Inspection.Journal;

/// <summary>An act as the text that is kept: the same groups as in the car file, with the unit of bare numbers beside them.</summary>
public static class ActJson
{
    /// <summary>The text of an act.</summary>
    /// <param name="act">The act.</param>
    /// <param name="units">The unit in which bare numbers are written; each text carries it, so that it stands on its own.</param>
    public static byte[] Write(Act act, LengthUnit units = LengthUnit.Inch)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using var json = new Utf8JsonWriter(bytes, JsonWriting.Readable with { Indented = false });
        json.WriteStartObject();
        json.WriteString("act", WordFor(act));
        json.WriteString("units", CarFileReader.Units.WordFor(act is Act.CarDescribed described ? described.Units : units));
        WriteBody(json, act, units);
        json.WriteEndObject();
        json.Flush();
        return bytes.WrittenSpan.ToArray();
    }

    /// <summary>The act in a text, or null with the faults recorded.</summary>
    public static Act? Read(ReadOnlySpan<byte> utf8, Faults faults)
    {
        if (JsonText.Read(utf8, faults) is not { } whole)
        {
            return null;
        }

        var before = faults.Count;
        var unitText = whole.Members.FirstOrDefault(m => m.Name == "units").Value?.Text;
        CarFileReader.Units.TryGetValue(unitText ?? "in", out var units);
        var fields = new Fields(whole, faults, units);
        fields.RequiredWord("units", CarFileReader.Units);
        var word = fields.Required("act");
        var act = ReadBody(word?.Text, fields, units);
        if (act is null && word is not null && faults.Count == before)
        {
            faults.Add(word, Texts.Say("journal.act-json.found-this-act-is-not", word.Describe()));
        }

        return faults.Count == before ? act : null;
    }

    private static string WordFor(Act act) =>
        act switch
        {
            Act.CarDescribed => "car-described",
            Act.ToolDescribed => "tool-described",
            Act.ToolRemoved => "tool-removed",
            Act.PointDrawn => "point-drawn",
            Act.PointRemoved => "point-removed",
            Act.LimitsChosen => "limits-chosen",
            Act.LevelRead => "level-read",
            Act.ReadingTaken => "reading-taken",
            Act.ReadingWithdrawn => "reading-withdrawn",
            Act.PhotoTaken => "photo-taken",
            Act.PhotoPutAway => "photo-put-away",
            Act.RoadDescribed => "road-described",
            Act.PartFound => "part-found",
            Act.PartTakenBack => "part-taken-back",
            Act.WheelRead => "wheel-read",
            Act.WheelReadingWithdrawn => "wheel-reading-withdrawn",
            Act.PressJobDescribed => "press-job-described",
            Act.PressJobRemoved => "press-job-removed",
            Act.BiteMade => "bite-made",
            Act.BiteWithdrawn => "bite-withdrawn",
            Act.CrackTested => "crack-tested",
            Act.BenchPartLaid => "bench-part-laid",
            Act.BenchPartPutAway => "bench-part-put-away",
            Act.BenchMeasured => "bench-measured",
            Act.BenchMeasureWithdrawn => "bench-measure-withdrawn",
            Act.VariantDescribed => "variant-described",
            Act.VariantRemoved => "variant-removed",
            Act.BookPagePut => "book-page-put",
            Act.BookPageRemoved => "book-page-removed",
            Act.FigureJudged => "figure-judged",
            Act.FigureMeasured => "figure-measured",
            Act.CarFitted => "car-fitted",
            Act.Undone => "undone",
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static void WriteBody(Utf8JsonWriter json, Act act, LengthUnit units)
    {
        switch (act)
        {
            case Act.CarDescribed a:
                json.WriteString("name", a.Car.Name);
                json.WriteOptional("serial", a.Car.Serial);
                json.WriteOptional("note", a.Car.Note);
                break;
            case Act.ToolDescribed a:
                json.WritePropertyName("tool");
                ToolJson.Write(json, a.Tool, units);
                break;
            case Act.ToolRemoved a:
                json.WriteString("id", a.Id);
                break;
            case Act.PointDrawn a:
                json.WritePropertyName("point");
                PointJson.Write(json, a.Point, units);
                break;
            case Act.PointRemoved a:
                json.WriteString("id", a.Id);
                break;
            case Act.LimitsChosen { Limits: { } limits }:
                json.WritePropertyName("limits");
                LimitsJson.Write(json, limits, units);
                break;
            case Act.LevelRead { Level: { } level }:
                json.WritePropertyName("level");
                LevelJson.Write(json, level, units);
                break;
            case Act.ReadingTaken a:
                json.WritePropertyName("reading");
                ReadingJson.Write(json, a.Reading, units);
                break;
            case Act.ReadingWithdrawn a:
                json.WriteString("id", a.Id);
                json.WriteString("reason", a.Reason);
                break;
            case Act.PhotoTaken a:
                json.WritePropertyName("photo");
                PhotoOfJson.Write(json, a.Photo);
                break;
            case Act.PhotoPutAway a:
                json.WritePropertyName("photo");
                PhotoOfJson.Write(json, a.Photo);
                break;
            case Act.RoadDescribed a:
                json.WritePropertyName("road");
                RoadJson.Write(json, a.Drawing, units);
                break;
            case Act.PartFound a:
                json.WritePropertyName("part");
                PartDeviationJson.Write(json, a.Part, units);
                break;
            case Act.PartTakenBack a:
                json.WriteString("id", a.Id);
                json.WriteString("reason", a.Reason);
                break;
            case Act.WheelRead a:
                json.WritePropertyName("reading");
                WheelReadingJson.Write(json, a.Reading, units);
                break;
            case Act.WheelReadingWithdrawn a:
                json.WriteString("id", a.Id);
                json.WriteString("reason", a.Reason);
                break;
            case Act.PressJobDescribed a:
                json.WritePropertyName("job");
                PressJson.Write(json, a.Job, units);
                break;
            case Act.PressJobRemoved a:
                json.WriteString("id", a.Id);
                break;
            case Act.BiteMade a:
                json.WriteString("job", a.Job);
                json.WritePropertyName("bite");
                BiteJson.Write(json, a.Bite, units);
                break;
            case Act.BiteWithdrawn a:
                json.WriteString("job", a.Job);
                json.WriteString("id", a.Id);
                json.WriteString("reason", a.Reason);
                break;
            case Act.CrackTested a:
                json.WriteString("job", a.Job);
                json.WritePropertyName("test");
                BiteJson.WriteTest(json, a.Test);
                break;
            case Act.BenchPartLaid a:
                json.WritePropertyName("part");
                PartJson.Write(json, a.Part with { Measures = [] }, units);
                break;
            case Act.BenchPartPutAway a:
                json.WriteString("id", a.Id);
                break;
            case Act.BenchMeasured a:
                json.WriteString("part", a.Part);
                json.WritePropertyName("measure");
                MeasureJson.Write(json, a.Measure, units);
                break;
            case Act.BenchMeasureWithdrawn a:
                json.WriteString("part", a.Part);
                json.WriteString("id", a.Id);
                json.WriteString("reason", a.Reason);
                break;
            case Act.VariantDescribed a:
                json.WritePropertyName("variant");
                VariantJson.Write(json, a.Variant, units);
                break;
            case Act.VariantRemoved a:
                json.WriteString("id", a.Id);
                break;
            case Act.BookPagePut or Act.BookPageRemoved or Act.FigureJudged or Act.FigureMeasured or Act.CarFitted:
                BookActJson.WriteBody(json, act, units);
                break;
            case Act.Undone a:
                json.WriteString("entry", a.Entry);
                break;
        }
    }

    private static Act? ReadBody(string? word, Fields fields, LengthUnit units) =>
        word switch
        {
            "car-described" => new Act.CarDescribed(
                new CarIdentity(fields.OptionalText("name") ?? "", fields.OptionalText("serial"), fields.OptionalText("note")),
                units
            ),
            "tool-described" => fields.Group("tool") is { } f && ToolJson.Read(f) is { } tool ? new Act.ToolDescribed(tool) : null,
            "tool-removed" => fields.RequiredText("id") is { } id ? new Act.ToolRemoved(id) : null,
            "point-drawn" => fields.Group("point") is { } f && PointJson.Read(f) is { } point ? new Act.PointDrawn(point) : null,
            "point-removed" => fields.RequiredText("id") is { } id ? new Act.PointRemoved(id) : null,
            "limits-chosen" => new Act.LimitsChosen(fields.Group("limits") is { } f ? LimitsJson.Read(f) : null),
            "level-read" => new Act.LevelRead(fields.Group("level") is { } f ? LevelJson.Read(f) : null),
            "reading-taken" => fields.Group("reading") is { } f && ReadingJson.Read(f) is { } reading
                ? new Act.ReadingTaken(reading)
                : null,
            "reading-withdrawn" => fields.RequiredText("id") is { } id && fields.RequiredText("reason") is { } reason
                ? new Act.ReadingWithdrawn(id, reason)
                : null,
            "photo-taken" => fields.Group("photo") is { } f && PhotoOfJson.Read(f) is { } photo ? new Act.PhotoTaken(photo) : null,
            "photo-put-away" => fields.Group("photo") is { } f && PhotoOfJson.Read(f) is { } photo ? new Act.PhotoPutAway(photo) : null,
            "road-described" => fields.Group("road") is { } f ? new Act.RoadDescribed(RoadJson.Read(f)) : null,
            "part-found" => fields.Group("part") is { } f && PartDeviationJson.Read(f) is { } part ? new Act.PartFound(part) : null,
            "part-taken-back" => fields.RequiredText("id") is { } id && fields.RequiredText("reason") is { } reason
                ? new Act.PartTakenBack(id, reason)
                : null,
            "wheel-read" => fields.Group("reading") is { } f && WheelReadingJson.Read(f) is { } wheel ? new Act.WheelRead(wheel) : null,
            "wheel-reading-withdrawn" => fields.RequiredText("id") is { } id && fields.RequiredText("reason") is { } reason
                ? new Act.WheelReadingWithdrawn(id, reason)
                : null,
            "press-job-described" => fields.Group("job") is { } f && PressJson.Read(f) is { } job ? new Act.PressJobDescribed(job) : null,
            "press-job-removed" => fields.RequiredText("id") is { } id ? new Act.PressJobRemoved(id) : null,
            "bite-made" => fields.RequiredText("job") is { } of && fields.Group("bite") is { } f && BiteJson.Read(f) is { } bite
                ? new Act.BiteMade(of, bite)
                : null,
            "bite-withdrawn" => fields.RequiredText("job") is { } of
            && fields.RequiredText("id") is { } id
            && fields.RequiredText("reason") is { } reason
                ? new Act.BiteWithdrawn(of, id, reason)
                : null,
            "crack-tested" => fields.RequiredText("job") is { } of && fields.Group("test") is { } f && BiteJson.ReadTest(f) is { } test
                ? new Act.CrackTested(of, test)
                : null,
            "bench-part-laid" => fields.Group("part") is { } f && PartJson.Read(f) is { } part ? new Act.BenchPartLaid(part) : null,
            "bench-part-put-away" => fields.RequiredText("id") is { } id ? new Act.BenchPartPutAway(id) : null,
            "bench-measured" => fields.RequiredText("part") is { } part
            && fields.Group("measure") is { } f
            && MeasureJson.Read(f) is { } measure
                ? new Act.BenchMeasured(part, measure)
                : null,
            "bench-measure-withdrawn" => fields.RequiredText("part") is { } part
            && fields.RequiredText("id") is { } id
            && fields.RequiredText("reason") is { } reason
                ? new Act.BenchMeasureWithdrawn(part, id, reason)
                : null,
            "variant-described" => fields.Group("variant") is { } f && VariantJson.Read(f) is { } variant
                ? new Act.VariantDescribed(variant)
                : null,
            "variant-removed" => fields.RequiredText("id") is { } id ? new Act.VariantRemoved(id) : null,
            "book-page-put" or "book-page-removed" or "figure-judged" or "figure-measured" or "car-fitted" => BookActJson.ReadBody(
                word,
                fields
            ),
            "undone" => Guid.TryParse(fields.RequiredText("entry"), out var entry) ? new Act.Undone(entry) : null,
            _ => null,
        };
}
