using Plumbmark.Inspection.Floor;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>A reading worth taking next.</summary>
/// <param name="Sentence">What to do and what it is good for.</param>
/// <param name="Address">Where the form stands ready for it.</param>
public sealed record NextLine(string Sentence, string Address)
{
    /// <summary>The proposals of an answer, best first. What is asked for under a doubted reading is not asked for twice.</summary>
    public static IReadOnlyList<NextLine> Of(FloorAnswer answer, long car, string tool)
    {
        var asked = answer.Suspects.Select(s => s.Sentence).ToHashSet(StringComparer.Ordinal);
        return [.. answer.Next.Where(n => !asked.Contains(n.Sentence)).Select(n => new NextLine(n.Sentence, AddressOf(n, car, tool)))];
    }

    /// <summary>Where the form stands ready for a reading.</summary>
    public static string AddressOf(NextReading next, long car, string tool)
    {
        // A repeat names the same ends as a tape reading does.
        var kind = EntryKind.Of(next.Kind);
        var form = new EntryForm(kind, next.Point ?? "", next.From ?? "", next.To ?? "", "", tool, "", "", "", "", new FieldFaults());
        return $"{form.Address(car)}#{(form.IsPicked ? "value" : "entry")}";
    }
}
