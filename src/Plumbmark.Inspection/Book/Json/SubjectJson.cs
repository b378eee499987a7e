using System.Text.Json;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Bench.Json;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Json;

/// <summary>What a figure is about, in a file: its kind, and the names that this kind needs.</summary>
internal static class SubjectJson
{
    public static BookSubject? Read(Fields fields)
    {
        if (fields.RequiredWord("kind", BookWordLists.Kinds) is not { } kind)
        {
            // The names are asked for all the same, so that they are not told as unknown besides.
            foreach (var name in new[] { "from", "to", "point", "part", "variant", "dimension", "name" })
            {
                fields.Optional(name);
            }

            return null;
        }

        return BookWordLists.SenseOf(kind) is { } sense ? ReadBetween(fields, sense)
            : BookWordLists.OrdinateOf(kind) is { } ordinate ? ReadAt(fields, ordinate)
            : kind == SubjectKind.Part ? ReadPart(fields)
            : fields.RequiredText("name") is { } own ? new BookSubject.Named(own)
            : null;
    }

    public static void Write(Utf8JsonWriter json, BookSubject subject)
    {
        json.WriteString("kind", BookWordLists.Kinds.WordFor(BookWordLists.KindOf(subject)));
        switch (subject)
        {
            case BookSubject.Between b:
                json.WriteString("from", b.From);
                json.WriteString("to", b.To);
                break;
            case BookSubject.At a:
                json.WriteString("point", a.Point);
                break;
            case BookSubject.OfPart p:
                json.WriteString("part", PartWordLists.Kinds.WordFor(p.Kind));
                json.WriteOptional("variant", p.Variant);
                json.WriteString("dimension", p.Dimension);
                break;
            case BookSubject.Named n:
                json.WriteString("name", n.Name);
                break;
        }
    }

    private static BookSubject.Between? ReadBetween(Fields fields, LengthSense sense)
    {
        var (from, to) = (fields.RequiredText("from"), fields.RequiredText("to"));
        if (from is not null && from == to)
        {
            fields.Faults.Add(fields.Part, Texts.Say("book.subject-json.the-figure-runs-from-to", from));
            return null;
        }

        return from is null || to is null ? null : new BookSubject.Between(from, to, sense);
    }

    private static BookSubject.At? ReadAt(Fields fields, Ordinate ordinate) =>
        fields.RequiredText("point") is { } point ? new BookSubject.At(point, ordinate) : null;

    private static BookSubject.OfPart? ReadPart(Fields fields)
    {
        var kind = fields.RequiredWord("part", PartWordLists.Kinds);
        var variant = fields.OptionalText("variant");
        var dimension = fields.RequiredText("dimension");
        return kind is null || dimension is null ? null : new BookSubject.OfPart(kind.Value, variant, dimension);
    }
}
