using System.Text;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Exchange;

/// <summary>Readings as CSV, a row each, every length as it was typed. What is written reads back as the same readings.</summary>
public static class ReadingsCsv
{
    /// <summary>Every reading of the car, those taken back included. UTF-8 with a byte order mark, which spreadsheets want.</summary>
    public static byte[] Write(CarFile car)
    {
        var csv = new StringBuilder("\uFEFF");
        CsvText.WriteRow(csv, ColumnMatch.Fields);
        foreach (var reading in car.Readings)
        {
            var cells = ReadingCells.Of(reading, car.Units);
            CsvText.WriteRow(csv, ColumnMatch.Fields.Select(f => CsvText.Shielded(cells[f])));
        }

        return Encoding.UTF8.GetBytes(csv.ToString());
    }

    /// <summary>The heads of a file, so that a person can say what its columns mean; empty when it has none.</summary>
    public static IReadOnlyList<string> HeadsOf(ReadOnlySpan<byte> bytes) =>
        Decoded(bytes, new Faults()) is { } text && CsvScanner.Rows(text, new Faults()) is [var heads, ..]
            ? [.. heads.Select(h => h.Text)]
            : [];

    /// <summary>The readings in a file. Reading goes on after a fault, so that all are told at once, each with its row.</summary>
    /// <param name="bytes">The file; UTF-8.</param>
    /// <param name="car">The car they are for: its points, its unit, the readings it has.</param>
    /// <param name="columns">What each column means; null to go by <see cref="ColumnMatch.Of"/>.</param>
    /// <param name="addsPoints">Whether a point that the car does not have is drawn rather than refused.</param>
    public static ReadingsCsvOutcome Read(
        ReadOnlySpan<byte> bytes,
        CarFile car,
        IReadOnlyList<string?>? columns = null,
        bool addsPoints = false
    )
    {
        var faults = new Faults();
        var rows = Decoded(bytes, faults) is { } text ? CsvScanner.Rows(text, faults) : [];
        if (rows.Count == 0)
        {
            if (faults.Count == 0)
            {
                faults.Add(new Fault("", 1, 1, Texts.Say("exchange.readings-csv.the-file-is-empty-a")));
            }

            return new ReadingsCsvOutcome.Refused(faults.InOrder());
        }

        var heads = rows[0].Select(h => h.Text).ToList();
        var import = new ReadingsImport(car, heads, columns ?? ColumnMatch.Of(heads), addsPoints, faults);
        return import.Read(rows.Skip(1));
    }

    private static string? Decoded(ReadOnlySpan<byte> bytes, Faults faults)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            faults.Add(new Fault("", 0, 0, Texts.Say("exchange.readings-csv.the-file-is-not-utf")));
            return null;
        }
    }
}
