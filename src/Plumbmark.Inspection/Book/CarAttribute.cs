namespace Plumbmark.Inspection.Book;

/// <summary>One thing a car is fitted with that the book makes a difference by, such as wheels: wire, or drive: right.</summary>
/// <param name="Name">What it is about.</param>
/// <param name="Value">Which of the kinds.</param>
public sealed record CarAttribute(string Name, string Value)
{
    /// <summary>Whether a car with these attributes is meant; a car of which it is unknown may be.</summary>
    public SerialFit Fits(IReadOnlyList<CarAttribute> fitted)
    {
        var known = fitted.Where(f => Same(f.Name, Name)).ToList();
        return known.Count == 0 ? SerialFit.CannotTell
            : known.Exists(f => Same(f.Value, Value)) ? SerialFit.Applies
            : SerialFit.DoesNotApply;
    }

    private static bool Same(string a, string b) => string.Equals(a.Trim(), b.Trim(), StringComparison.OrdinalIgnoreCase);
}
