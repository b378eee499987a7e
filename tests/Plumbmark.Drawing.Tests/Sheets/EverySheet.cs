using System.Collections.Concurrent;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Round;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Drawing.Sheets;

/// <summary>Cars that sheets must cope with, and every sheet of each.</summary>
internal static class EverySheet
{
    public static IReadOnlyList<string> Cars { get; } = ["demo", "empty", "skeleton", "five readings", "long names", "large"];

    private static readonly ConcurrentDictionary<string, (CarFile Car, FloorAnswer Answer)> s_made = new(StringComparer.Ordinal);

    public static (CarFile Car, FloorAnswer Answer) Car(string word) => s_made.GetOrAdd(word, Make);

    private static (CarFile Car, FloorAnswer Answer) Make(string word)
    {
        if (word == "large")
        {
            return InventedFrame.Large();
        }

        var demo = DemoCar.File();
        var car = word switch
        {
            "demo" => demo,
            "empty" => CarFile.Named("", LengthUnit.Inch),
            "skeleton" => CarFile.Named("Fresh", LengthUnit.Millimetre) with
            {
                Frame = new Frame([.. FrameSkeleton.Ladder(8, LengthUnit.Millimetre)]),
            },
            "five readings" => demo with { Readings = [.. demo.Readings.Take(5)] },
            "long names" => LongNames(demo),
            _ => throw new ArgumentOutOfRangeException(nameof(word), word, null),
        };
        return (car, FloorInspection.Of(car));
    }

    public static IEnumerable<(string Kind, byte[] Pdf)> Of(CarFile car, FloorAnswer answer, SheetOptions options) =>
        [
            ("frame", FrameSheet.Pdf(car, answer, options)),
            ("workshop", WorkshopSheet.Pdf(car, answer, options)),
            ("before-after", BeforeAfterSheet.Pdf(car, answer, car, answer, options)),
            ("form", BlankForm.Pdf(car, MeasuringRound.Of(car, RoundScope.All), options, "57A")),
            ("parts", PartsSheet.Pdf(car, BenchInspection.Of(car), options)),
            ("press", PressSheet.Pdf(car, options)),
            ("road", RoadSheet.Pdf(car, Road(car), options)),
        ];

    // The large frame's readings are numbers for the page and fit no frame: solving them for the wheels would take a minute and say nothing.
    private static RoadAnswer Road(CarFile car) =>
        car.Readings.Count > 1000 ? RoadInspection.Of(car, MeasuredPlaces.None) : RoadInspection.Of(car);

    private static CarFile LongNames(CarFile car)
    {
        string Long(string id) => $"左前懸架点 {id[..^2]} front bracket upper hole{id[^2..]}";
        var points = car.Frame.Points.Select(p => p with { Id = Long(p.Id), Mirror = p.Mirror is { } m ? Long(m) : null });
        var readings = car.Readings.OfType<Reading.Plan>().Select(r => r with { From = Long(r.From), To = Long(r.To) });
        return new CarFile(
            car.Units,
            new CarIdentity(
                "Ένα πολύ μακρύ όνομα, Жёлтый кабриолет, 黄色い車, with a name that goes on and on until nobody reads it any more",
                new string('7', 60)
            ),
            car.Tools,
            car.Frame with
            {
                Points = [.. points],
            },
            [.. readings]
        );
    }
}
