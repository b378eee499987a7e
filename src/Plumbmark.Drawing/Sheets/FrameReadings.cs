using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Sheets;

/// <summary>Every reading as it was written down, in as many columns as fit; doubted ones are marked, those taken back are told with the reason.</summary>
internal static class FrameReadings
{
    private const int MostAcross = 6;
    private const int MostRowsDown = 45;

    /// <summary>The readings in as many columns as this much width allows.</summary>
    public static IEnumerable<Block> Blocks(CarFile car, FloorAnswer answer, double width)
    {
        var standing = car.StandingReadings.ToList();
        if (standing.Count == 0)
        {
            yield break;
        }

        var doubted = answer.Suspects.Select(s => s.Reading).OfType<string>().ToHashSet(StringComparer.Ordinal);
        yield return TextBlock.Heading($"Readings as written down ({standing.Count})");
        var unit = car.Units == LengthUnit.Inch ? "inches" : "millimetres";
        yield return new TextBlock(
            $"A number without a unit is in {unit}. Lengths are in plan unless \"direct\" is written.",
            PageType.Small,
            staysWithNext: true
        );
        var taped = standing.Where(r => r is not Reading.Drop).ToList();
        if (taped.Count > 0)
        {
            yield return Table(taped, doubted, width);
        }

        var drops = standing.Where(r => r is Reading.Drop).ToList();
        if (drops.Count > 0)
        {
            yield return new TextBlock(
                "Dropped again: where the new mark lay from the first, forward and to the left.",
                PageType.Small,
                staysWithNext: true
            );
            yield return Table(drops, doubted, width);
        }

        foreach (var block in TakenBack(car))
        {
            yield return block;
        }
    }

    private static TableBlock Table(List<Reading> readings, HashSet<string> doubted, double width)
    {
        var shares = NaturalWidths(readings);
        var across = Math.Clamp((int)(width / shares.Sum()), 1, MostAcross);
        var columns = Enumerable
            .Range(0, across)
            .SelectMany(_ => new TableColumn[] { new("Id", shares[0]), new("What", shares[1]), new("Read", shares[2]) });
        var rowCount = (readings.Count + across - 1) / across;
        return new TableBlock(
            [.. columns],
            [.. Enumerable.Range(0, rowCount).Select(r => Row(readings, r, rowCount, across, doubted))],
            padding: 0.6
        );
    }

    private static List<TableCell> Row(List<Reading> readings, int row, int rowCount, int across, HashSet<string> doubted)
    {
        // Down the first column, then down the next, as a person reads a list; across when the list runs over pages.
        var cells = new List<TableCell>();
        for (var column = 0; column < across; column++)
        {
            var index = rowCount <= MostRowsDown ? (column * rowCount) + row : (row * across) + column;
            if (index >= readings.Count)
            {
                cells.AddRange([TableCell.Empty, TableCell.Empty, TableCell.Empty]);
                continue;
            }

            var reading = readings[index];
            var isDoubted = doubted.Contains(reading.Id);
            var value = ReadingWords.Value(reading);
            cells.Add(new TableCell(reading.Id, PageType.Small));
            cells.Add(new TableCell(ReadingWords.What(reading), PageType.CellSmall));
            cells.Add(
                isDoubted
                    ? new TableCell([(value, PageType.OutSmall), ("doubted", PageType.OutSmall)])
                    : new TableCell(value, PageType.CellSmall)
            );
        }

        return cells;
    }

    /// <summary>The room that ids, words and values need so that hardly any is broken.</summary>
    private static double[] NaturalWidths(IReadOnlyList<Reading> readings)
    {
        const double Beside = 7;
        const double WidestWords = 150;
        double Widest(Func<Reading, string> text) =>
            readings.Select(r => Plate.WidthOf(text(r), PageType.CellSmall)).DefaultIfEmpty(0).Max();
        return
        [
            Math.Min(Widest(r => r.Id), WidestWords / 2) + Beside,
            Math.Min(Math.Max(Widest(ReadingWords.What), 24), WidestWords) + Beside,
            Math.Min(Math.Max(Widest(ReadingWords.Value), 40), WidestWords) + Beside,
        ];
    }

    private static IEnumerable<Block> TakenBack(CarFile car)
    {
        var withdrawn = car.Readings.Where(r => r.Withdrawn is not null).ToList();
        if (withdrawn.Count > 0)
        {
            var words = withdrawn.Select(r => $"{r.Id} {ReadingWords.What(r)} {ReadingWords.Value(r)} ({r.Withdrawn})");
            yield return new TextBlock($"Taken back: {string.Join("; ", words)}.", PageType.Small);
        }
    }
}
