using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

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

        var unit = car.Units == LengthUnit.Inch ? Texts.Say("sheet.frame-readings.inches") : Texts.Say("sheet.frame-readings.millimetres");
        yield return TextBlock.CloseHeading(Texts.Say("sheet.frame-readings.readings-as-written-down-a", standing.Count, unit));
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
            Reading.Plan => Texts.Say("sheet.frame-readings.lengths-in-plan-from-mark"),
            Reading.Direct => Texts.Say("sheet.frame-readings.lengths-from-point-to-point"),
            Reading.Height { IsAboveFloor: true } => Texts.Say("sheet.frame-readings.heights-above-the-floor"),
            Reading.Height => Texts.Say("sheet.frame-readings.heights-above-one-level"),
            Reading.Rise => Texts.Say("sheet.frame-readings.how-much-higher-one-point"),
            Reading.Offset => Texts.Say("sheet.frame-readings.distance-from-a-string-to"),
            Reading.Drop => Texts.Say("sheet.frame-readings.dropped-again-where-the-new"),
            Reading.Indirect => Texts.Say("sheet.frame-readings.marks-made-another-way"),
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
            yield return new TextBlock(Texts.Say("sheet.frame-readings.taken-back", string.Join("; ", words)), PageType.DenseGrey);
        }
    }
}
