using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Json;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Floor.Levelling;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Press;
using Plumbmark.Inspection.Road.Json;

namespace Plumbmark.Inspection.Car;

/// <summary>Reads a car file. Reading goes on after a fault, so that all faults are told at once.</summary>
public static class CarFileReader
{
    internal static readonly WordList<LengthUnit> Units = new(("in", LengthUnit.Inch), ("mm", LengthUnit.Millimetre));

    /// <summary>The car in the bytes of a file, or everything that is wrong with them.</summary>
    public static CarFileOutcome Read(ReadOnlySpan<byte> utf8)
    {
        var faults = new Faults();
        var whole = JsonText.Read(utf8, faults);
        var file = whole is null ? null : ReadWhole(whole, faults);
        return faults.Count == 0 && file is not null ? new CarFileOutcome.Accepted(file) : new CarFileOutcome.Refused(faults.InOrder());
    }

    private static CarFile? ReadWhole(JsonPart whole, Faults faults)
    {
        // The unit comes first, because bare numbers anywhere else mean nothing without it.
        var units = UnitsOf(whole);
        var fields = new Fields(whole, faults, units);
        if (whole.Kind != JsonValueKind.Object)
        {
            return null;
        }

        var format = fields.Required("format");
        if (format is not null && format.Text != CarFile.Format)
        {
            faults.Add(format, Texts.Say("car.file-reader.found-is-needed-here", format.Describe(), CarFile.Format));
        }

        fields.RequiredWhole("version", CarFile.Version, CarFile.Version);
        fields.RequiredWord("units", Units);
        var car = fields.Group("car") is { } group ? ReadCar(group) : new CarIdentity("");
        var tools = Located(fields, "tools", ToolJson.Read, faults, units);
        var frame = fields.Group("frame");
        var points = frame is null ? [] : Located(frame, "points", PointJson.Read, faults, units);
        var limits = frame?.Group("limits") is { } limitFields ? LimitsJson.Read(limitFields) : null;
        frame?.RefuseOthers();
        var readings = Located(fields, "readings", ReadingJson.Read, faults, units);
        var road = fields.Group("road") is { } roadFields ? RoadJson.Read(roadFields, points.Select(p => p.Value)) : null;
        var press = Located(fields, "press", PressJson.Read, faults, units);
        var level = fields.Group("level") is { } levelFields ? LevelJson.Read(levelFields) : null;
        var parts = fields.Group("parts") is { } partFields ? PartsJson.Read(partFields) : PartsSection.Empty;
        var book = fields.Group("book") is { } bookFields ? BookSectionJson.Read(bookFields) : BookSection.Empty;
        var photos = fields.List("photos", part => PhotoOfJson.Read(new Fields(part, faults, units)));
        fields.RefuseOthers();

        var allPoints = frame?.Items("points") ?? [];
        CarFileChecks.Amounts(allPoints, fields.Items("readings"), faults);
        HashSet<string> named = [.. allPoints.Select(p => p.TextOf("id")).OfType<string>()];
        CarFileChecks.Points(points, named, faults);
        CarFileChecks.ReadingPoints(fields.Items("readings"), named, faults);
        CarFileChecks.Readings(readings, faults);
        return new CarFile(
            units,
            car,
            [.. tools.Select(t => t.Value)],
            new Frame([.. points.Select(p => p.Value)], limits),
            [.. readings.Select(r => r.Value)]
        )
        {
            Photos = photos,
            Road = road,
            Press = [.. press.Select(j => j.Value)],
            Parts = parts,
            Book = book,
            Level = level,
        };
    }

    private static LengthUnit UnitsOf(JsonPart whole)
    {
        var part = whole.Members.FirstOrDefault(m => m.Name == "units").Value;
        return part is not null && Units.TryGetValue(part.Text, out var unit) ? unit : LengthUnit.Millimetre;
    }

    private static CarIdentity ReadCar(Fields fields)
    {
        var car = new CarIdentity(fields.OptionalText("name") ?? "", fields.OptionalText("serial"), fields.OptionalText("note"));
        fields.RefuseOthers();
        return car;
    }

    /// <summary>
    /// The items of a list with the place of each, so that later checks can say where; an id used twice is a fault, also where something else keeps the
    /// item from being read.
    /// </summary>
    private static List<Located<T>> Located<T>(Fields fields, string name, Func<Fields, T?> read, Faults faults, LengthUnit units)
        where T : class
    {
        var items = new List<Located<T>>();
        var firstUse = new Dictionary<string, JsonPart>(StringComparer.Ordinal);
        foreach (var part in fields.Items(name))
        {
            if (read(new Fields(part, faults, units)) is { } value)
            {
                items.Add(new Located<T>(value, part));
            }

            if (part.TextOf("id") is { } id && !firstUse.TryAdd(id, part))
            {
                faults.Add(part, Texts.Say("car.file-reader.the-id-is-already-used", id, firstUse[id].Line));
            }
        }

        return items;
    }
}

/// <summary>Something read from a file together with its place.</summary>
/// <param name="Value">What was read.</param>
/// <param name="Part">Where.</param>
internal sealed record Located<T>(T Value, JsonPart Part);
