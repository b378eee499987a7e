using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Book.Json;

/// <summary>How far a figure is believed, in a file; left out while it stands as printed.</summary>
internal static class StatusJson
{
    private static readonly WordList<Word> s_words = new(
        ("doubted", Word.Doubted),
        ("corrected", Word.Corrected),
        ("measured-elsewhere", Word.MeasuredElsewhere)
    );

    private enum Word
    {
        Doubted,
        Corrected,
        MeasuredElsewhere,
    }

    public static FigureStatus Read(Fields fields)
    {
        var word = fields.RequiredWord("is", s_words);
        FigureStatus? status = word switch
        {
            Word.Doubted => fields.RequiredText("reason") is { } reason
                ? new FigureStatus.Doubted(reason, fields.OptionalText("evidence"))
                : null,
            Word.Corrected => ReadCorrected(fields),
            Word.MeasuredElsewhere => fields.RequiredText("car") is { } car ? new FigureStatus.MeasuredElsewhere(car) : null,
            _ => null,
        };
        fields.RefuseOthers();
        return status ?? FigureStatus.AsPrinted;
    }

    public static void Write(Utf8JsonWriter json, FigureStatus status, LengthUnit units)
    {
        if (status is FigureStatus.Printed)
        {
            return;
        }

        json.WriteStartObject("status");
        switch (status)
        {
            case FigureStatus.Doubted d:
                json.WriteString("is", s_words.WordFor(Word.Doubted));
                json.WriteString("reason", d.Reason);
                json.WriteOptional("evidence", d.Evidence);
                break;
            case FigureStatus.Corrected c:
                json.WriteString("is", s_words.WordFor(Word.Corrected));
                AmountPart.Write(json, "value", c.Value, units);
                json.WriteString("reason", c.Reason);
                json.WriteOptional("evidence", c.Evidence);
                break;
            case FigureStatus.MeasuredElsewhere m:
                json.WriteString("is", s_words.WordFor(Word.MeasuredElsewhere));
                json.WriteString("car", m.Car);
                break;
        }

        json.WriteEndObject();
    }

    private static FigureStatus.Corrected? ReadCorrected(Fields fields)
    {
        var value = AmountPart.Required(fields, "value");
        var reason = fields.RequiredText("reason");
        var evidence = fields.OptionalText("evidence");
        return value is null || reason is null ? null : new FigureStatus.Corrected(value, reason, evidence);
    }
}
