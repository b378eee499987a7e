using System.Globalization;
using System.Text.Json;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Exchange;

/// <summary>Turns the rows of a CSV file into readings by the very rules of the car file: a row is read as the group of fields that it would be there.</summary>
internal sealed class ReadingsImport(
    CarFile car,
    IReadOnlyList<string> heads,
    IReadOnlyList<string?> columns,
    bool addsPoints,
    Faults faults
)
{
    private readonly Dictionary<string, Reading> _known = car
        .Readings.DistinctBy(r => r.Id)
        .ToDictionary(r => r.Id, StringComparer.Ordinal);
    private readonly Dictionary<string, int> _firstUse = new(StringComparer.Ordinal);
    private readonly HashSet<string> _givenIds = new(StringComparer.Ordinal);
    private readonly HashSet<string> _points = car.Frame.Points.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
    private readonly List<string> _newPoints = [];
    private readonly List<Reading> _readings = [];
    private int _alreadyThere;
    private int _lastNumber;

    public ReadingsCsvOutcome Read(IEnumerable<IReadOnlyList<CsvCell>> rows)
    {
        var before = faults.Count;
        RefuseMissingColumns();
        if (faults.Count > before)
        {
            // Every row would only say the same again.
            return new ReadingsCsvOutcome.Refused(faults.InOrder());
        }

        _lastNumber = car.Readings.Select(r => NumberOf(r.Id)).DefaultIfEmpty(0).Max();
        var all = rows.ToList();
        var at = columns.Index().FirstOrDefault(c => c.Item == "id", (-1, null)).Index;
        _givenIds.UnionWith(all.Where(r => at >= 0 && at < r.Count).Select(r => CsvText.Unshielded(r[at].Text)));
        all.ForEach(ReadRow);

        var unused = heads.Where((_, i) => i >= columns.Count || columns[i] is null).Where(h => h.Length > 0).ToList();
        return faults.Count > 0
            ? new ReadingsCsvOutcome.Refused(faults.InOrder())
            : new ReadingsCsvOutcome.Accepted(_readings, [.. _newPoints.Select(NewPoint)], _alreadyThere, unused);
    }

    private void RefuseMissingColumns()
    {
        bool Has(string field) => columns.Contains(field);
        if (!Has("value") && !Has("dx"))
        {
            faults.Add(new Fault("", 1, 1, Texts.Say("exchange.readings-import.no-column-holds-the-length", string.Join(", ", heads))));
        }

        if (!(Has("from") && Has("to")) && !Has("point"))
        {
            faults.Add(new Fault("", 1, 1, Texts.Say("exchange.readings-import.no-columns-hold-the-ends", string.Join(", ", heads))));
        }
    }

    private void ReadRow(IReadOnlyList<CsvCell> row)
    {
        var line = row[0].Line;
        if (row.Count > heads.Count)
        {
            faults.Add(
                new Fault(
                    "",
                    line,
                    row[heads.Count].Column,
                    Texts.Say("exchange.readings-import.the-row-has-cells-and", row.Count, heads.Count)
                )
            );
            return;
        }

        var before = faults.Count;
        var (part, units) = PartOf(row, line);
        var reading = ReadingJson.Read(new Fields(part, faults, units));
        if (reading is not null)
        {
            CarFileChecks.Readings([new Located<Reading>(reading, part)], faults);
        }

        if (reading is not null && faults.Count == before)
        {
            Take(reading, part);
        }
    }

    /// <summary>The row as the group of fields that the car file would have; cells not given are left out.</summary>
    private (JsonPart Part, LengthUnit Units) PartOf(IReadOnlyList<CsvCell> row, int line)
    {
        var part = new JsonPart(JsonValueKind.Object, "", line, 1);
        LengthUnit? units = null;
        for (var i = 0; i < row.Count; i++)
        {
            if (i >= columns.Count || columns[i] is not { } field || !row[i].IsGiven)
            {
                continue;
            }

            if (field == "unit")
            {
                units = UnitOf(row[i]);
                continue;
            }

            var cell = new JsonPart(JsonValueKind.String, field, row[i].Line, row[i].Column, CsvText.Unshielded(row[i].Text));
            part.MemberList.Add((field, cell));
        }

        var names = part.Members.Select(m => m.Name).ToHashSet(StringComparer.Ordinal);
        if (!names.Contains("id"))
        {
            part.MemberList.Add(("id", new JsonPart(JsonValueKind.String, "id", line, 1, NextId())));
        }

        if (!names.Contains("kind"))
        {
            var kind =
                names.Contains("from") || !names.Contains("point") ? "plan"
                : names.Contains("dx") ? "drop"
                : "height";
            part.MemberList.Add(("kind", new JsonPart(JsonValueKind.String, "kind", line, 1, kind)));
        }

        return (part, units ?? HeadUnit() ?? car.Units);
    }

    private LengthUnit? UnitOf(CsvCell cell)
    {
        var unit = ColumnMatch.UnitOf(cell.Text);
        if (unit is null)
        {
            faults.Add(new Fault("unit", cell.Line, cell.Column, Texts.Say("exchange.readings-import.found-the-text-in-or", cell.Text)));
        }

        return unit;
    }

    private LengthUnit? HeadUnit()
    {
        var at = columns.Index().FirstOrDefault(c => c.Item == "value", (-1, null)).Index;
        return at >= 0 && at < heads.Count ? ColumnMatch.UnitOf(heads[at]) : null;
    }

    private void Take(Reading reading, JsonPart part)
    {
        if (!_firstUse.TryAdd(reading.Id, part.Line))
        {
            faults.Add(
                new Fault(
                    "id",
                    part.Line,
                    1,
                    Texts.Say("exchange.readings-import.the-id-is-already-used", reading.Id, _firstUse[reading.Id])
                )
            );
            return;
        }

        if (_known.TryGetValue(reading.Id, out var there))
        {
            if (there == reading)
            {
                _alreadyThere++;
            }
            else
            {
                faults.Add(new Fault("id", part.Line, 1, Texts.Say("exchange.readings-import.the-car-has-another-reading", reading.Id)));
            }

            return;
        }

        foreach (var point in reading.Points.Where(p => !_points.Contains(p)).Distinct())
        {
            if (addsPoints)
            {
                _points.Add(point);
                _newPoints.Add(point);
            }
            else
            {
                faults.Add(new Fault("", part.Line, 1, Texts.Say("exchange.readings-import.reading-goes-to-which-is", reading.Id, point)));
            }
        }

        _readings.Add(reading);
    }

    private FramePoint NewPoint(string id)
    {
        var mirror =
            id.EndsWith(".L", StringComparison.Ordinal) ? id[..^1] + "R"
            : id.EndsWith(".R", StringComparison.Ordinal) ? id[..^1] + "L"
            : null;
        return new FramePoint(id, mirror is not null && _points.Contains(mirror) ? mirror : null);
    }

    private string NextId()
    {
        string id;
        do
        {
            id = $"r{++_lastNumber}";
        } while (_givenIds.Contains(id) || _firstUse.ContainsKey(id));

        return id;
    }

    private static int NumberOf(string id) =>
        id.Length > 1 && id[0] == 'r' && int.TryParse(id.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : 0;
}
