using System.Text;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Exchange;

/// <summary>Takes CSV text apart into rows of cells. It goes on after a fault.</summary>
internal sealed class CsvScanner
{
    private readonly string _text;
    private readonly char _separator;
    private readonly Faults _faults;
    private int _at;
    private int _line = 1;
    private int _lineStart;

    private CsvScanner(string text, Faults faults)
    {
        _text = text;
        _faults = faults;
        _separator = SeparatorOf(text);
    }

    /// <summary>The rows that hold anything.</summary>
    public static IReadOnlyList<IReadOnlyList<CsvCell>> Rows(string text, Faults faults)
    {
        var scanner = new CsvScanner(text, faults);
        var rows = new List<IReadOnlyList<CsvCell>>();
        while (scanner._at < text.Length)
        {
            var row = scanner.Row();
            if (row.Any(c => c.IsGiven))
            {
                rows.Add(row);
            }
        }

        return rows;
    }

    /// <summary>The separator that the first line has most of; a comma when it has none.</summary>
    private static char SeparatorOf(string text)
    {
        var first = text.AsSpan(0, text.AsSpan().IndexOfAny('\r', '\n') is var end and >= 0 ? end : text.Length);
        var best = ',';
        foreach (var separator in ";\t")
        {
            best = first.Count(separator) > first.Count(best) ? separator : best;
        }

        return best;
    }

    private List<CsvCell> Row()
    {
        var cells = new List<CsvCell>();
        while (true)
        {
            cells.Add(Cell());
            if (_at >= _text.Length || _text[_at] != _separator)
            {
                EndLine();
                return cells;
            }

            _at++;
            if (_at == _text.Length)
            {
                cells.Add(new CsvCell("", false, _line, _at - _lineStart + 1));
                return cells;
            }
        }
    }

    private void EndLine()
    {
        if (_at < _text.Length && _text[_at] == '\r')
        {
            _at++;
        }

        if (_at < _text.Length && _text[_at] == '\n')
        {
            _at++;
        }

        _line++;
        _lineStart = _at;
    }

    private CsvCell Cell()
    {
        var (line, column) = (_line, _at - _lineStart + 1);
        if (_at < _text.Length && _text[_at] == '"')
        {
            return new CsvCell(Quoted(line, column), true, line, column);
        }

        var start = _at;
        while (_at < _text.Length && _text[_at] != _separator && _text[_at] is not ('\r' or '\n'))
        {
            _at++;
        }

        return new CsvCell(_text[start.._at].Trim(), false, line, column);
    }

    private string Quoted(int line, int column)
    {
        var inside = new StringBuilder();
        _at++;
        while (_at < _text.Length)
        {
            var c = _text[_at++];
            if (c == '"' && _at < _text.Length && _text[_at] == '"')
            {
                inside.Append('"');
                _at++;
            }
            else if (c == '"')
            {
                RefuseBehindQuotes();
                return inside.ToString();
            }
            else
            {
                inside.Append(c);
                if (c == '\n')
                {
                    _line++;
                    _lineStart = _at;
                }
            }
        }

        _faults.Add(new Fault("", line, column, Texts.Say("exchange.csv-scanner.a-quotation-mark-opens-here")));
        return inside.ToString();
    }

    private void RefuseBehindQuotes()
    {
        var start = _at;
        while (_at < _text.Length && _text[_at] != _separator && _text[_at] is not ('\r' or '\n'))
        {
            _at++;
        }

        if (!string.IsNullOrWhiteSpace(_text[start.._at]))
        {
            var found = Texts.Say("exchange.csv-scanner.found-behind-a-closing-quotation", _text[start.._at].Trim());
            _faults.Add(new Fault("", _line, start - _lineStart + 1, Texts.Say("exchange.csv-scanner.a-separator-is-needed-there", found)));
        }
    }
}
