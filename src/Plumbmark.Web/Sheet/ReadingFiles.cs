using System.Text;
using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Sheet;

/// <summary>Readings that come in as CSV: all of them, or none with every fault told by its row.</summary>
internal static class ReadingFiles
{
    private const int MostBytes = 2 * 1024 * 1024;

    public static IResult BringIn(CarRequest request)
    {
        var (text, sentence) = TextOf(request);
        if (text is null)
        {
            return Show.Again<ReadingsInPage>(ReadingsInView.Of(request) with { Sentence = sentence });
        }

        var bytes = Encoding.UTF8.GetBytes(text);
        var heads = ReadingsCsv.HeadsOf(bytes);
        var columns = ColumnsOf(request, heads);
        var addsPoints = request.Field("points") == "add";
        return ReadingsCsv
            .Read(bytes, request.Car.File, columns, addsPoints)
            .Match(
                accepted => request.Keep(request.Address("floor"), car => Acts(bytes, car.File, columns, addsPoints)),
                faults =>
                    Show.Again<ReadingsInPage>(
                        ReadingsInView.Of(request) with
                        {
                            Csv = text,
                            Columns = [.. heads.Zip(columns, (head, field) => new ReadingsInView.Column(head, field))],
                            AddsPoints = addsPoints,
                            Faults = faults,
                        }
                    )
            );
    }

    /// <summary>Read again under the write lock, so that ids fit the car as it stands at that moment.</summary>
    private static IReadOnlyList<Act> Acts(byte[] bytes, CarFile car, IReadOnlyList<string?> columns, bool addsPoints) =>
        ReadingsCsv
            .Read(bytes, car, columns, addsPoints)
            .Match<IReadOnlyList<Act>>(
                a => [.. a.NewPoints.Select(p => new Act.PointDrawn(p)), .. a.Readings.Select(r => new Act.ReadingTaken(r))],
                _ => []
            );

    private static (string? Text, string? Sentence) TextOf(CarRequest request)
    {
        if (request.File("file") is { } file)
        {
            if (file.Length > MostBytes)
            {
                return (null, Say("sheet.reading.the-file-is-larger"));
            }

            try
            {
                return (new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(PageRequest.Bytes(file)), null);
            }
            catch (DecoderFallbackException)
            {
                return (null, Say("sheet.reading.the-file-is-not"));
            }
        }

        return request.Field("csv") is { Length: > 0 } csv ? (csv, null) : (null, Say("sheet.reading.choose-a-file-or"));
    }

    /// <summary>What each column means: as chosen in the form, or as its head says.</summary>
    private static IReadOnlyList<string?> ColumnsOf(CarRequest request, IReadOnlyList<string> heads)
    {
        var guessed = ColumnMatch.Of(heads);
        return
        [
            .. heads.Select(
                (_, i) =>
                    request.Field($"column-{i}") switch
                    {
                        "" => guessed[i],
                        var field when ColumnMatch.Fields.Contains(field) => field,
                        _ => null,
                    }
            ),
        ];
    }
}
