using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Press;

namespace Plumbmark.Inspection.Journal;

/// <summary>Reads a journal from its first entry to its last and gives the car as it then stands.</summary>
public static class Fold
{
    /// <summary>The car after the given entries, in their order. An entry whose id came before is read once.</summary>
    public static CarFile Of(IEnumerable<JournalEntry> entries)
    {
        var once = entries.DistinctBy(e => e.Id).ToList();
        var undone = UndoneIn(once);
        return once.Where(e => !undone.Contains(e.Id)).Aggregate(CarFile.Named("", LengthUnit.Inch), (car, entry) => After(car, entry.Act));
    }

    /// <summary>The acts that make an empty record into the given car: what importing a car file writes into a journal.</summary>
    public static IEnumerable<Act> ActsOf(CarFile file)
    {
        yield return new Act.CarDescribed(file.Car, file.Units);
        foreach (var tool in file.Tools)
        {
            yield return new Act.ToolDescribed(tool);
        }

        foreach (var point in file.Frame.Points)
        {
            yield return new Act.PointDrawn(point);
        }

        if (file.Frame.Limits is { } limits)
        {
            yield return new Act.LimitsChosen(limits);
        }

        if (file.Level is { } level)
        {
            yield return new Act.LevelRead(level);
        }

        foreach (var reading in file.Readings)
        {
            yield return new Act.ReadingTaken(reading);
        }

        foreach (var photo in file.Photos)
        {
            yield return new Act.PhotoTaken(photo);
        }

        foreach (
            var act in BenchFold
                .ActsOf(file.Parts)
                .Concat(file.Press.SelectMany(PressJobs.ActsOf))
                .Concat(RoadFold.ActsOf(file.Road))
                .Concat(BookFold.ActsOf(file.Book))
        )
        {
            yield return act;
        }
    }

    /// <summary>The entries that an undo reaches. Read backwards, because an undo can itself be undone.</summary>
    public static IReadOnlySet<Guid> UndoneIn(IReadOnlyList<JournalEntry> entries)
    {
        var undone = new HashSet<Guid>();
        foreach (var entry in entries.Reverse())
        {
            if (entry.Act is Act.Undone undo && !undone.Contains(entry.Id))
            {
                undone.Add(undo.Entry);
            }
        }

        return undone;
    }

    private static CarFile After(CarFile car, Act act) =>
        act switch
        {
            Act.CarDescribed a => car with { Car = a.Car, Units = a.Units },
            Act.ToolDescribed a => car with { Tools = Put(car.Tools, a.Tool, t => t.Id) },
            Act.ToolRemoved a => car with { Tools = [.. car.Tools.Where(t => t.Id != a.Id)] },
            Act.PointDrawn a => WithPoints(car, Put(car.Frame.Points, a.Point, p => p.Id)),
            Act.PointRemoved a => WithPoints(car, [.. car.Frame.Points.Where(p => p.Id != a.Id)]),
            Act.LimitsChosen a => car with { Frame = car.Frame with { Limits = a.Limits } },
            Act.LevelRead a => car with { Level = a.Level },
            Act.ReadingTaken a => car.Readings.Any(r => r.Id == a.Reading.Id) ? car : car with { Readings = [.. car.Readings, a.Reading] },
            Act.ReadingWithdrawn a => car with
            {
                Readings = [.. car.Readings.Select(r => r.Id == a.Id ? r with { Withdrawn = a.Reason } : r)],
            },
            Act.PhotoTaken a => car.Photos.Contains(a.Photo) ? car : car with { Photos = [.. car.Photos, a.Photo] },
            Act.PhotoPutAway a => car with { Photos = [.. car.Photos.Where(p => p != a.Photo)] },
            Act.PressJobDescribed or Act.PressJobRemoved or Act.BiteMade or Act.BiteWithdrawn or Act.CrackTested => car with
            {
                Press = PressJobs.After(car.Press, act),
            },
            Act.BenchPartLaid
            or Act.BenchPartPutAway
            or Act.BenchMeasured
            or Act.BenchMeasureWithdrawn
            or Act.VariantDescribed
            or Act.VariantRemoved => car with
            {
                Parts = BenchFold.After(car.Parts, act),
            },
            Act.RoadDescribed or Act.PartFound or Act.PartTakenBack or Act.WheelRead or Act.WheelReadingWithdrawn => car with
            {
                Road = RoadFold.After(car.Road, act),
            },
            Act.BookPagePut or Act.BookPageRemoved or Act.FigureJudged or Act.FigureMeasured or Act.CarFitted => car with
            {
                Book = BookFold.After(car.Book, act),
            },
            _ => car,
        };

    private static CarFile WithPoints(CarFile car, IReadOnlyList<FramePoint> points) =>
        car with
        {
            Frame = car.Frame with { Points = points },
        };

    internal static IReadOnlyList<T> Put<T>(IReadOnlyList<T> items, T item, Func<T, string> idOf)
    {
        var id = idOf(item);
        return items.Any(i => idOf(i) == id) ? [.. items.Select(i => idOf(i) == id ? item : i)] : [.. items, item];
    }
}
