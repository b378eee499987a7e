using System.Buffers;
using System.Text.Json;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book.Checks;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Book;

/// <summary>The report on book pages as JSON for programs.</summary>
public static class BookReportJson
{
    private static readonly WordList<FindingKind> s_kinds = new(
        ("chain", FindingKind.ChainDoesNotClose),
        ("triangle", FindingKind.NoTriangle),
        ("sides", FindingKind.SidesDiffer),
        ("columns", FindingKind.ColumnsDisagree),
        ("not-equal", FindingKind.NotEqual),
        ("two-figures", FindingKind.TwoFigures),
        ("plan-against-direct", FindingKind.PlanAgainstDirect),
        ("does-not-fit", FindingKind.DoesNotFit),
        ("serial-gap", FindingKind.SerialGap),
        ("serials-unordered", FindingKind.SerialsUnordered),
        ("sense-unsaid", FindingKind.SenseUnsaid)
    );

    private static readonly WordList<SlipKind> s_slips = new(
        ("look-alike-digit", SlipKind.LookAlikeDigit),
        ("fraction-lost", SlipKind.FractionLost),
        ("digits-swapped", SlipKind.DigitsSwapped),
        ("other-end", SlipKind.OtherEnd),
        ("other-division", SlipKind.OtherDivision),
        ("whole-step", SlipKind.WholeStep),
        ("point-moved", SlipKind.PointMoved),
        ("half-or-double", SlipKind.HalfOrDouble),
        ("plan-for-direct", SlipKind.PlanForDirect)
    );

    /// <summary>One JSON object, UTF-8 with a line end at the end.</summary>
    public static byte[] Bytes(BookReport report)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, JsonWriting.Readable))
        {
            json.WriteStartObject();
            json.WriteStartArray("pages");
            foreach (var page in report.Pages)
            {
                WritePage(json, page);
            }

            json.WriteEndArray();
            if (report.ForCar is { } forCar)
            {
                json.WriteStartArray("forCar");
                foreach (var subject in forCar.Subjects)
                {
                    WriteSubject(json, subject);
                }

                json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }

    private static void WritePage(Utf8JsonWriter json, PageReport report)
    {
        json.WriteStartObject();
        json.WriteString("id", report.Page.Id);
        json.WriteString("source", report.Page.Source.ToString());
        json.WriteNumber("figures", report.Page.Dimensions.Count);
        json.WriteStartArray("findings");
        foreach (var finding in report.Findings)
        {
            json.WriteStartObject();
            json.WriteString("kind", s_kinds.WordFor(finding.Kind));
            json.WriteBoolean("contradiction", finding.IsContradiction);
            json.WriteStartArray("dimensions");
            foreach (var id in finding.Dimensions)
            {
                json.WriteStringValue(id);
            }

            json.WriteEndArray();
            json.WriteString("sentence", finding.Sentence);
            json.WriteStartArray("slips");
            foreach (var slip in finding.Slips)
            {
                WriteSlip(json, slip);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteSlip(Utf8JsonWriter json, LikelySlip slip)
    {
        json.WriteStartObject();
        json.WriteString("dimension", slip.Dimension);
        json.WriteString("kind", s_slips.WordFor(slip.Kind));
        json.WriteString("printed", slip.Printed.AsTyped);
        json.WriteString("likely", slip.Likely.AsTyped);
        json.WriteEndObject();
    }

    private static void WriteSubject(Utf8JsonWriter json, SubjectAnswer answer)
    {
        json.WriteStartObject();
        json.WriteString("subject", answer.Subject.Words);
        json.WriteString(
            "choice",
            answer.Choice.Match(_ => "applies", _ => "disagree", _ => "can't tell", _ => "missing", _ => "for other cars")
        );
        if (answer.Choice is FigureChoice.Applies { Figure: { } figure })
        {
            json.WriteString("value", AmountText.Write(figure.Dimension.Used!));
            json.WriteString("source", figure.Source.ToString());
            json.WriteString("page", figure.Page.Id);
            json.WriteString("dimension", figure.Dimension.Id);
        }

        json.WriteEndObject();
    }
}
