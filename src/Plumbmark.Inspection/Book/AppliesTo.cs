using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>The cars that a page or a figure is meant for: by serial number, and by what they are fitted with.</summary>
/// <param name="Serials">Any of these ranges; empty for every number.</param>
/// <param name="Attributes">Each of these, such as wheels: wire; empty when nothing is asked. Names and words compare without regard to capitals.</param>
public sealed record AppliesTo(IReadOnlyList<SerialRange>? Serials = null, IReadOnlyList<CarAttribute>? Attributes = null)
{
    /// <summary>Every car.</summary>
    public static AppliesTo EveryCar { get; } = new();

    /// <summary>Any of these ranges; empty for every number.</summary>
    public IReadOnlyList<SerialRange> Serials { get; init; } = Serials ?? [];

    /// <summary>Each of these; an attribute named twice is met by either.</summary>
    public IReadOnlyList<CarAttribute> Attributes { get; init; } = Attributes ?? [];

    /// <summary>Whether nothing is asked.</summary>
    public bool IsEveryCar => Serials.Count == 0 && Attributes.Count == 0;

    /// <summary>Whether it is meant for a car.</summary>
    /// <param name="serial">The car's number; null when unknown or no serial number.</param>
    /// <param name="fitted">What is known of the car.</param>
    public SerialFit Fits(SerialNumber? serial, IReadOnlyList<CarAttribute> fitted)
    {
        var bySerial = Serials.Count == 0 ? SerialFit.Applies : Any(Serials.Select(r => r.Contains(serial)));
        var byAttribute = Attributes
            .GroupBy(a => a.Name, StringComparer.OrdinalIgnoreCase)
            .Select(g => Any(g.Select(asked => asked.Fits(fitted))));
        return All(byAttribute.Prepend(bySerial));
    }

    /// <summary>The stricter of two answers: what a page asks and what a figure on it asks.</summary>
    public static SerialFit All(IEnumerable<SerialFit> fits)
    {
        var all = fits.ToList();
        return all.Contains(SerialFit.DoesNotApply) ? SerialFit.DoesNotApply
            : all.Contains(SerialFit.CannotTell) ? SerialFit.CannotTell
            : SerialFit.Applies;
    }

    /// <summary>Such as <c>QD 1000 to QD 1199; wheels: wire</c>.</summary>
    public override string ToString() =>
        IsEveryCar
            ? Texts.Say("book.applies-to.every-car")
            : string.Join("; ", Serials.Select(s => s.ToString()).Concat(Attributes.Select(a => $"{a.Name}: {a.Value}")));

    private static SerialFit Any(IEnumerable<SerialFit> fits)
    {
        var any = fits.ToList();
        return any.Contains(SerialFit.Applies) ? SerialFit.Applies
            : any.Contains(SerialFit.CannotTell) ? SerialFit.CannotTell
            : SerialFit.DoesNotApply;
    }
}
