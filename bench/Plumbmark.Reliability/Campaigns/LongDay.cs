using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Store;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>A day and a night of entry without a pause, time compressed: the memory in use must level off.</summary>
public static class LongDay
{
    private const int Cars = 20;

    /// <summary>Memory at one hour of the day.</summary>
    public sealed record Hour(int Number, int Entries, double HeapMegabytes);

    /// <summary>Twenty phones enter a reading a minute each, every hour into cars of their own; a car is opened and the list shown as often.</summary>
    public static IEnumerable<Hour> Run(int hours, int seed)
    {
        using var folder = new Folder();
        using var journals = Journals.Open(folder.Journal);
        var random = new Random(seed);
        var entries = 0;
        var points = new Frame([new FramePoint("A.L"), new FramePoint("A.R"), new FramePoint("B.L"), new FramePoint("B.R")], null);
        for (var hour = 1; hour <= hours; hour++)
        {
            var cars = Enumerable
                .Range(0, Cars)
                .Select(_ => journals.Add(CarFile.Named($"Hour {hour}", LengthUnit.Millimetre) with { Frame = points }).Id)
                .ToList();
            for (var minute = 0; minute < 60; minute++)
            {
                foreach (var car in cars)
                {
                    var value = Length.FromMillimetres(600 + random.Next(1000));
                    _ = journals.Append(
                        car,
                        Guid.NewGuid(),
                        null,
                        c => [new Act.ReadingTaken(new Reading.Plan($"r{c.Sequence}", "A.L", "B.R", value))]
                    );
                    entries++;
                }

                _ = journals.Car(1 + random.Next(cars.Count * hour));
                _ = journals.Glances("", 0, 50);
            }

            GC.Collect();
            yield return new Hour(hour, entries, GC.GetTotalMemory(forceFullCollection: true) / 1048576.0);
        }
    }
}
