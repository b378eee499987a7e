using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Sheets;

/// <summary>Every reading as it was written down, by kind; doubted ones are marked, those taken back are told with the reason.</summary>
internal static class FrameReadings
{
    public static IEnumerable<Block> Blocks(CarFile car, FloorAnswer answer)
    {
        var standing = car.StandingReadings.ToList();
        if (standing.Count == 0)
        {
            yield break;
        }

        var unit = car.Units == LengthUnit.Inch ? "inches" : "millimetres";
        yield return TextBlock.CloseHeading($"Readings as written down ({standing.Count}); a number without a unit is in {unit}");
        var doubted = answer.Suspects.Select(s => s.Reading).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var kind in standing.GroupBy(Caption).OrderBy(g => Order(g.First())))
        {
            yield return new ReadingsBlock(
                kind.Key,
                [
                    .. kind.Select(r => new ReadingsBlock.Line(
                        r.Id,
                        ReadingWords.Short(r),
                        ReadingWords.WithoutUnit(ReadingWords.Value(r), car.Units),
                        doubted.Contains(r.Id)
                    )),
                ]
            );
        }

        foreach (var block in TakenBack(car))
        {
            yield return block;
        }
    }

    private static string Caption(Reading reading) =>
        reading switch
        {
            Reading.Plan => "Lengths in plan, from mark to mark.",
            Reading.Direct => "Lengths from point to point through the air.",
            Reading.Height { IsAboveFloor: true } => "Heights above the floor.",
            Reading.Height => "Heights above one level.",
            Reading.Rise => "How much higher one point is than another.",
            Reading.Offset => "Distance from a string, to the left of it.",
            Reading.Drop => "Dropped again: where the new mark lay from the first, forward and to the left.",
            Reading.Indirect => "Marks made another way.",
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static int Order(Reading reading) =>
        reading switch
        {
            Reading.Plan => 0,
            Reading.Direct => 1,
            Reading.Height { IsAboveFloor: false } => 2,
            Reading.Height => 3,
            Reading.Rise => 4,
            Reading.Offset => 5,
            Reading.Drop => 6,
            Reading.Indirect => 7,
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static IEnumerable<Block> TakenBack(CarFile car)
    {
        var withdrawn = car.Readings.Where(r => r.Withdrawn is not null).ToList();
        if (withdrawn.Count > 0)
        {
            var words = withdrawn.Select(r => $"{r.Id} {ReadingWords.What(r)} {ReadingWords.Value(r)} ({r.Withdrawn})");
            yield return new TextBlock($"Taken back: {string.Join("; ", words)}.", PageType.DenseGrey);
        }
    }
}
