using System.Globalization;
using System.Text;
using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Exchange;

public sealed class ReadingsCsvLaws
{
    private static string Told(IReadOnlyList<Fault> faults) => string.Join('\n', faults);

    [Fact]
    public void AnyCar_WrittenAndRead_GivesTheSameReadings() =>
        CarFiles.Any.Sample(car =>
        {
            var empty = car with { Readings = [] };
            var read = ReadingsCsv
                .Read(ReadingsCsv.Write(car), empty)
                .Match(a => a.Readings, f => throw new InvalidOperationException(Told(f)));
            Assert.Equal(car.Readings, read);
            // The same bytes again: every length as it was typed.
            Assert.Equal(ReadingsCsv.Write(car), ReadingsCsv.Write(car with { Readings = read }));
        });

    [Fact]
    public void AnyCar_ReadTwice_IsTakenOnce() =>
        CarFiles.Any.Sample(car =>
        {
            var again = ReadingsCsv.Read(ReadingsCsv.Write(car), car).Match(a => a, f => throw new InvalidOperationException(Told(f)));
            Assert.Empty(again.Readings);
            Assert.Equal(car.Readings.Count, again.AlreadyThere);
        });

    // Any text a person may note, also one that a spreadsheet would take for a formula.
    [Fact]
    public void AnyNote_ComesBackUnchangedAndIsNoFormula() =>
        Gen.OneOf(Gen.String, Gen.String[Gen.Char["=+-@'\",;\t\r\n ab"], 0, 12])
            .Where(text => !text.Any(char.IsSurrogate))
            .Sample(note =>
            {
                var reading = new Reading.Height("r1", "A.L", Length.FromInches(3)) { Note = note };
                var car = CarFile.Named("x", LengthUnit.Inch) with { Frame = new Frame([new FramePoint("A.L")]), Readings = [reading] };
                var read = ReadingsCsv
                    .Read(ReadingsCsv.Write(car), car with { Readings = [] })
                    .Match(a => a.Readings, f => throw new InvalidOperationException(Told(f)));
                Assert.Equal(note, Assert.Single(read).Note);
                Assert.False(IsFormula(CsvText.Shielded(note)), note);
            });

    // A spreadsheet works out what begins so, unless it is a plain number (the usual list: = + - @, tab, carriage return).
    private static bool IsFormula(string? cell) =>
        cell is { Length: > 0 }
        && "=+-@\t\r".Contains(cell[0], StringComparison.Ordinal)
        && !decimal.TryParse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);

    [Fact]
    public void AnyCar_NoCellIsAFormula() =>
        CarFiles.Any.Sample(car =>
        {
            var csv = Encoding.UTF8.GetString(ReadingsCsv.Write(car)).TrimStart('\uFEFF');
            var cells = CsvScanner.Rows(csv, new Faults()).SelectMany(r => r);
            Assert.DoesNotContain(cells, c => IsFormula(c.Text));
        });

    [Fact]
    public void AnyBytes_HaveAnOutcome() =>
        Gen
            .Byte.Array[0, 300]
            .Sample(bytes => ReadingsCsv.Read(bytes, CarFile.Named("x", LengthUnit.Inch)).Match(_ => true, f => f.Count > 0));
}
