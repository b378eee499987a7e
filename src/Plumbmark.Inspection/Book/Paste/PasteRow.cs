using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Book.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Paste;

/// <summary>One row of a pasted block on its way to a figure; faults are collected, not thrown.</summary>
internal sealed class PasteRow(
    int line,
    IReadOnlyList<string> cells,
    IReadOnlyList<string> headings,
    IReadOnlyList<PasteColumn?> columns,
    LengthUnit units,
    List<PasteFault> faults
)
{
    private static readonly string[] s_yes = ["both", "yes", "y", "x", "l/r", "l+r", "l & r", Texts.Say("book.paste-row.l-and-r")];
    private static readonly string[] s_no = ["", "one", "no", "n", "-"];
    private static readonly string[] s_noFigure = ["", "-", "–", "—", "n/a", "none", "equal", Texts.Say("book.paste-row.must-be-equal")];

    /// <summary>The figure in the row; null with the faults recorded.</summary>
    public BookDimension? Read(int number)
    {
        var before = faults.Count;
        var subject = Subject();
        var (value, also) = (Amount(PasteColumn.Value, units), Amount(PasteColumn.Also, Other(units)));
        var dimension = new BookDimension(Text(PasteColumn.Id) ?? $"{number}", subject ?? new BookSubject.Named($"{number}"))
        {
            Value = value ?? also,
            AlsoPrinted = value is null ? null : also,
            Tolerance = Tolerance(),
            IsBothSides = BothSides(),
            AppliesTo = Serials(),
            Source = new BookSource(Page: Text(PasteColumn.Page), Figure: Text(PasteColumn.Figure)),
            Note = Text(PasteColumn.Note),
        };
        if (subject is BookSubject.Between or BookSubject.At && dimension.Value is { } found and not Bench.Amount.OfLength)
        {
            Fault(PasteColumn.Value, Texts.Say("book.paste-row.found-a-length-is-needed", AmountText.Write(found)));
        }

        return faults.Count == before ? dimension : null;
    }

    private BookSubject? Subject()
    {
        var (from, to, word) = (Text(PasteColumn.From), Text(PasteColumn.To), Text(PasteColumn.Kind)?.ToLowerInvariant());
        if (word is null)
        {
            return Text(PasteColumn.Part) is not null ? Part()
                : from is not null && to is not null ? Between(from, to, LengthSense.Unsaid)
                : Own(from ?? to ?? Text(PasteColumn.Dimension) ?? Text(PasteColumn.Id));
        }

        if (!BookWordLists.Kinds.TryGetValue(word, out var kind))
        {
            Fault(PasteColumn.Kind, Texts.Say("book.paste-row.found-one-of-is-needed", word, string.Join(", ", BookWordLists.Kinds.Keys)));
            return null;
        }

        return BookWordLists.SenseOf(kind) is { } sense ? Between(from, to, sense)
            : BookWordLists.OrdinateOf(kind) is { } ordinate ? At(from, ordinate)
            : kind == SubjectKind.Part ? Part()
            : Own(Text(PasteColumn.Dimension) ?? from ?? Text(PasteColumn.Id));
    }

    private BookSubject.Between? Between(string? from, string? to, LengthSense sense)
    {
        if (from is null || to is null || from == to)
        {
            Fault(
                from is null ? PasteColumn.From : PasteColumn.To,
                from is not null && from == to
                    ? Texts.Say("book.paste-row.both-points-are-two-points", from)
                    : Texts.Say("book.paste-row.a-point-is-missing-here")
            );
            return null;
        }

        return new BookSubject.Between(from, to, sense);
    }

    private BookSubject.At? At(string? point, Ordinate ordinate)
    {
        if (point is null)
        {
            Fault(PasteColumn.From, Texts.Say("book.paste-row.the-point-is-missing-here"));
        }

        return point is null ? null : new BookSubject.At(point, ordinate);
    }

    private BookSubject.OfPart? Part()
    {
        var (part, dimension) = (Text(PasteColumn.Part), Text(PasteColumn.Dimension));
        var isKnown = PartWordLists.Kinds.TryGetValue((part ?? "").Trim().ToLowerInvariant().Replace(' ', '-'), out var kind);
        if (!isKnown)
        {
            Fault(PasteColumn.Part, Texts.Say("book.paste-row.found-one-of-is-needed", part, string.Join(", ", PartWordLists.Kinds.Keys)));
        }

        if (dimension is null)
        {
            Fault(PasteColumn.Dimension, Texts.Say("book.paste-row.which-dimension-of-the-part"));
        }

        return isKnown && dimension is not null ? new BookSubject.OfPart(kind, Text(PasteColumn.Variant), dimension) : null;
    }

    private BookSubject.Named? Own(string? name)
    {
        if (name is null)
        {
            Fault(PasteColumn.From, Texts.Say("book.paste-row.nothing-says-what-the-figure"));
        }

        return name is null ? null : new BookSubject.Named(name);
    }

    private Amount? Amount(PasteColumn column, LengthUnit unit) =>
        Text(column) is { } text && !s_noFigure.Contains(text.ToLowerInvariant()) ? Read(column, text, unit) : null;

    private Amount? Read(PasteColumn column, string text, LengthUnit unit)
    {
        if (ScannedText.Refusal(text) is { } scanned)
        {
            Fault(column, scanned);
            return null;
        }

        var amount = AmountText.Read(text, unit, out var refusal);
        if (amount is null)
        {
            Fault(column, refusal ?? Texts.Say("book.paste-row.found-a-length-an-angle", text));
        }

        return amount;
    }

    private PrintedTolerance? Tolerance()
    {
        if (Text(PasteColumn.Tolerance) is not { } text || s_noFigure.Contains(text.ToLowerInvariant()))
        {
            return null;
        }

        var bare = text.Replace("+/-", "", StringComparison.Ordinal).Replace("±", "", StringComparison.Ordinal).Trim();
        var split = bare.StartsWith('+') ? bare.IndexOfAny(['-', '−'], 1) : -1;
        if (split < 0)
        {
            return Read(PasteColumn.Tolerance, bare.TrimStart('+'), units) is { Si: >= 0 } even ? new PrintedTolerance(even, even) : null;
        }

        var (plus, minus) = (
            Read(PasteColumn.Tolerance, bare[1..split].Trim(), units),
            Read(PasteColumn.Tolerance, bare[(split + 1)..].Trim(), units)
        );
        return plus is null || minus is null ? null : new PrintedTolerance(plus, minus);
    }

    private bool BothSides()
    {
        var text = (Text(PasteColumn.Sides) ?? "").ToLowerInvariant();
        if (!s_yes.Contains(text) && !s_no.Contains(text))
        {
            Fault(PasteColumn.Sides, Texts.Say("book.paste-row.found-both-or-nothing-is", text));
        }

        return s_yes.Contains(text);
    }

    private AppliesTo Serials()
    {
        var range = new SerialRange(Serial(PasteColumn.SerialFrom), Serial(PasteColumn.SerialTo));
        if (AppliesToJson.Unsound(range) is { } sentence)
        {
            Fault(PasteColumn.SerialTo, sentence);
        }

        return range is { From: null, To: null } ? AppliesTo.EveryCar : new AppliesTo([range]);
    }

    private SerialNumber? Serial(PasteColumn column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        var serial = SerialNumber.Read(text);
        if (serial is null)
        {
            Fault(column, Texts.Say("book.paste-row.found", text, SerialNumber.Allowed));
        }

        return serial;
    }

    private string? Text(PasteColumn column)
    {
        var index = columns.ToList().IndexOf(column);
        return index >= 0 && index < cells.Count && cells[index].Length > 0 ? cells[index] : null;
    }

    private void Fault(PasteColumn column, string sentence)
    {
        var index = columns.ToList().IndexOf(column);
        faults.Add(new PasteFault(line, index >= 0 ? headings[index] : null, sentence));
    }

    private static LengthUnit Other(LengthUnit unit) => unit == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch;
}
