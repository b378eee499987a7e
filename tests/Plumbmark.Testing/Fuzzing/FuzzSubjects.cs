using System.Text;
using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Paste;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Press;
using SerialRange = Plumbmark.Inspection.Book.SerialRange;

namespace Plumbmark.Testing.Fuzzing;

/// <summary>Every parser that takes what a person typed or a file brought.</summary>
public static class FuzzSubjects
{
    private static readonly CarFile s_demo = DemoCar.File();

    // Its frame and readings alone: what the other rooms wrote is not read by these parsers and would only cost time.
    private static readonly CarFile s_frame = CarFile.Named("Frame", s_demo.Units) with
    {
        Tools = s_demo.Tools,
        Frame = s_demo.Frame,
        Readings = [.. s_demo.Readings.Take(6)],
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FuzzSubject> All { get; } =
    [
        new(
            "length",
            Texts(
                "47 5/8",
                "33-17/32\"",
                "5' 1 3/16\"",
                "121.0cm",
                "47⅝",
                "5 ft 1.25 in",
                ".5",
                "121,5 cm",
                "1.215 m",
                "12 thou",
                "-3/16 in",
                "1210"
            ),
            ["ft", "in", "mm", "cm", "m", "thou", "'", "\"", "″", "′", "/", "-", " ", "1/2", "⅞"],
            Length
        ),
        new(
            "angle, rate, load",
            Texts("7.5 deg", "7 deg 30'", "180 lbf/in", "200 lb", "31.5 N/mm", "12 1/2 in", "450 N", "0°30'", "2 kg"),
            ["deg", "°", "'", "lbf/in", "N/mm", "lb", "kg", "N"],
            AmountOrLoad
        ),
        new(
            "serial number",
            Texts("QD 00417", "q.d. 1047", "QD3/1047 L", "H3/12-A", "00012", "TX"),
            ["QD", "/", "-", ".", " ", "L"],
            Serial
        ),
        new("quick entry", Texts("A.L B.R 47 5/8", "47 5/8", "A.L", "r12"), ["A.L", "B.R", " ", "\t"], Typed),
        new("car file", [.. SomeCars(), .. Club()], JsonWords(SomeCars()), Car),
        new("press log", [.. PressLogs()], JsonWords(PressLogs()), Car),
        new(
            "readings CSV",
            [ReadingsCsv.Write(s_demo), .. SmallCsv()],
            [.. ColumnMatch.Fields, "plan", "height", "A.L", "B.R", ";", "\t", "\""],
            Csv
        ),
        new("book file", [.. SomeBooks()], JsonWords(SomeBooks()), Book),
        new("pasted book page", Pastes(), [.. PasteHeadings.Offered, "\t", "±", "1/8", "in", "mm"], Paste),
        new("journal entry", [.. SomeActs()], JsonWords(SomeActs()), Entry),
    ];

    /// <summary>The subject of that name.</summary>
    public static FuzzSubject Named(string name) => All.Single(s => s.Name == name);

    /// <summary>What is wrong with a sentence; null when it is one that may be printed and shown.</summary>
    public static string? NoSentence(string sentence) =>
        sentence.Length < 8 ? $"no sentence: {sentence}"
        : sentence.Length > 2000 ? "a sentence of more than 2000 characters"
        : sentence.Any(c => char.IsControl(c)) ? "a control character in a sentence"
        : !IsWhole(sentence) ? "half a surrogate pair in a sentence"
        : sentence[^1] is not ('.' or '?' or '”' or '"' or ')')
            ? $"a sentence without an end: …{sentence[^Math.Min(20, sentence.Length)..]}"
        : null;

    private static bool IsWhole(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsSurrogate(text[i]) && !(i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1]) && ++i > 0))
            {
                return false;
            }
        }

        return true;
    }

    private static (bool, string?) Refused(IEnumerable<Fault> faults)
    {
        var any = false;
        foreach (var fault in faults.Take(50))
        {
            any = true;
            if (NoSentence(fault.Sentence) is { } wrong)
            {
                return (false, wrong);
            }

            if (fault.Path.Any(char.IsControl) || !IsWhole(fault.Path))
            {
                return (false, "a control character in a place");
            }
        }

        return (false, any ? null : "refused without a reason");
    }

    // Half of the inputs as UTF-16 units as they are, so that halves of surrogate pairs come through as a form or a script may send them.
    private static string Text(byte[] bytes) =>
        bytes.Length % 2 == 0 && bytes.Length > 0 && bytes[0] % 8 == 0
            ? new string(System.Runtime.InteropServices.MemoryMarshal.Cast<byte, char>(bytes))
            : Encoding.UTF8.GetString(bytes);

    private static (bool, string?) Length(byte[] bytes)
    {
        var unit = bytes.Length % 3 == 0 ? LengthUnit.Inch : LengthUnit.Millimetre;
        return LengthText
            .Read(Text(bytes), unit, LengthSign.MayBeNegative)
            .Match(
                length =>
                    !double.IsFinite(length.Metres) ? (true, "a length that is no number")
                    : LengthText.Read(length.AsTyped, unit, LengthSign.MayBeNegative) is not LengthOutcome.Read again
                    || again.Value.Metres != length.Metres
                        ? (true, "a length that does not read back")
                    : (true, (string?)null),
                refused => (false, NoSentence(refused.Sentence))
            );
    }

    private static (bool, string?) AmountOrLoad(byte[] bytes)
    {
        var text = Text(bytes);
        _ = AmountText.ReadLoad(text);
        var amount = AmountText.Read(text, LengthUnit.Inch, out var refusal);
        return amount is not null
            ? (true, AmountText.Read(AmountText.Write(amount), LengthUnit.Inch, out _) is null ? "does not read back" : null)
            : (false, refusal is null ? "refused without a reason" : NoSentence(refusal));
    }

    private static (bool, string?) Serial(byte[] bytes)
    {
        var text = Text(bytes);
        if (SerialNumber.Read(text) is not { } serial)
        {
            return (false, null);
        }

        var range = new SerialRange(serial, null);
        _ = SerialCoverage.Of([
            range,
            new SerialRange(null, serial),
            new SerialRange(SerialNumber.Read("QD 417"), SerialNumber.Read("QD 900")),
        ]);
        return (true, SerialNumber.Read(serial.AsWritten) != serial ? "does not read back" : null);
    }

    // What a page takes in as a name, a note or a value goes through the journal and the file: written, read, the same.
    private static (bool, string?) Typed(byte[] bytes)
    {
        var text = Text(bytes);
        var file = CarFile.Named(text, LengthUnit.Inch) with
        {
            Frame = new Frame([new FramePoint(text), new FramePoint("B.R")], null),
            Readings = [new Reading.Plan("r1", text, "B.R", Engine.Lengths.Length.FromInches(12)) { Note = text }],
        };
        return CarFileReader
            .Read(CarFileWriter.Write(file))
            .Match(
                read => (true, IsWhole(text) && read.Car.Name != text ? "a name that comes back as another" : null),
                faults => Refused(faults)
            );
    }

    private static (bool, string?) Car(byte[] bytes) =>
        CarFileReader
            .Read(bytes)
            .Match(
                car =>
                {
                    var written = CarFileWriter.Write(car);
                    return CarFileReader
                        .Read(written)
                        .Match(
                            again =>
                                (true, written.AsSpan().SequenceEqual(CarFileWriter.Write(again)) ? null : "writes itself differently"),
                            faults => (true, (string?)$"cannot be read back: {faults[0].Sentence}")
                        );
                },
                faults => Refused(faults)
            );

    private static (bool, string?) Book(byte[] bytes) =>
        BookFile
            .Read(bytes)
            .Match(
                pages =>
                    BookFile
                        .Read(BookFile.Write(pages))
                        .Match(_ => (true, (string?)null), faults => (true, (string?)$"cannot be read back: {faults[0].Sentence}")),
                faults => Refused(faults)
            );

    private static (bool, string?) Csv(byte[] bytes)
    {
        _ = ReadingsCsv.HeadsOf(bytes);
        return ReadingsCsv
            .Read(bytes, s_frame, addsPoints: bytes.Length % 2 == 0)
            .Match(
                accepted =>
                    CarFileReader
                        .Read(
                            CarFileWriter.Write(
                                s_frame with
                                {
                                    Frame = s_frame.Frame with { Points = [.. s_frame.Frame.Points, .. accepted.NewPoints] },
                                    Readings = [.. s_frame.Readings, .. accepted.Readings],
                                }
                            )
                        )
                        .Match(_ => (true, (string?)null), faults => (true, (string?)$"makes a car that is refused: {faults[0].Sentence}")),
                faults => Refused(faults)
            );
    }

    private static (bool, string?) Paste(byte[] bytes) =>
        BookPaste
            .Read(Text(bytes), LengthUnit.Inch)
            .Match(
                _ => (true, null),
                refused =>
                    (
                        false,
                        refused.Faults.Count == 0
                            ? "refused without a reason"
                            : refused.Faults.Take(50).Select(f => NoSentence(f.Sentence)).FirstOrDefault(w => w is not null)
                    )
            );

    private static (bool, string?) Entry(byte[] bytes)
    {
        var faults = new Faults();
        if (ActJson.Read(bytes, faults) is not { } act)
        {
            return Refused(faults);
        }

        // Whatever act came, the journal with it still folds.
        var entry = new JournalEntry(Guid.Empty, DateTimeOffset.UnixEpoch, null, act);
        var car = Fold.Of([
            .. Fold.ActsOf(s_demo).Take(40).Select((a, i) => new JournalEntry(new Guid(i + 1, 0, 0, new byte[8]), default, null, a)),
            entry,
        ]);
        _ = CarFileWriter.Write(car);
        return (true, ActJson.Read(ActJson.Write(act), new Faults()) is null ? "does not read back" : null);
    }

    private static List<byte[]> Texts(params string[] texts) => [.. texts.Select(Encoding.UTF8.GetBytes)];

    // One array from one seed: a run of samples would draw its own seeds after the first, and no two runs would try the same inputs.
    private static T[] Some<T>(Gen<T> gen, int count) => gen.Array[count].Single(_ => true, "0N0XIzNsQ0O2");

    private static IEnumerable<byte[]> SomeCars() => Some(CarFiles.Any, 60).Select(CarFileWriter.Write).Where(b => b.Length < 6000);

    private static IEnumerable<byte[]> Club() =>
        [CarFileWriter.Write(ClubFile.Of(s_demo with { Book = BookSection.Empty, Parts = PartsSection.Empty, Press = [], Road = null }))];

    private static IEnumerable<byte[]> PressLogs() =>
        [
            CarFileWriter.Write(CarFile.Named("Press", LengthUnit.Inch) with { Press = s_demo.Press }),
            .. Enumerable.Range(0, 4).Select(n => PressJobSamples.LowerArmAfter(n).Utf8()),
        ];

    private static IEnumerable<byte[]> SmallCsv() =>
        Texts(
            "kind,from,to,value,tool\nplan,A.L,B.R,61 3/16,tape\n",
            "kind;point;value;note\nheight;A.L;\"13,5\";\"a \"\"b\"\"\"\n",
            "from\tto\tlength (mm)\nA.L\tB.L\t812\n"
        );

    private static IEnumerable<byte[]> SomeBooks() => Some(BookPages.Pages, 40).Select(BookFile.Write).Where(b => b.Length < 8000);

    private static List<byte[]> Pastes() =>
        Texts(
            "name\tvalue\ttolerance\nwheelbase\t96 1/2\t±1/8\ntrack\t48\t\n",
            "figure\tvalue\tmm\nA to B\t47 5/8\t1210\n",
            "name,value\n\"a, b\",12\n"
        );

    private static IEnumerable<byte[]> SomeActs() =>
        Fold.ActsOf(s_demo).GroupBy(a => a.GetType()).SelectMany(g => g.Take(2)).Select(a => ActJson.Write(a)).Where(b => b.Length < 8000);

    private static IReadOnlyList<string> JsonWords(IEnumerable<byte[]> files) =>
        [
            .. files
                .SelectMany(f => Encoding.UTF8.GetString(f).Split('"').Where((_, i) => i % 2 == 1))
                .Where(w => w.Length is > 0 and < 30)
                .Distinct()
                .Take(300)
                .SelectMany(w => new[] { w, $"\"{w}\"", $"\"{w}\":" }),
        ];
}
