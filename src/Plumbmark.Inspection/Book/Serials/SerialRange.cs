using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>The serial numbers from one to another, both included; an end that is null is open.</summary>
/// <remarks>Both ends are of one series (<see cref="IsSound"/>). A range without ends holds every car, also one whose number is unknown.</remarks>
/// <param name="From">The first; null for from the beginning.</param>
/// <param name="To">The last; null for to the end.</param>
public sealed record SerialRange(SerialNumber? From, SerialNumber? To)
{
    /// <summary>Whether the ends can belong together: one series, and the first not after the last.</summary>
    public bool IsSound => From is null || To is null || From.To(To) is SerialOrder.Before or SerialOrder.Same;

    /// <summary>Whether a car lies in the range.</summary>
    /// <param name="serial">Its number; null when unknown.</param>
    public SerialFit Contains(SerialNumber? serial)
    {
        if (From is null && To is null)
        {
            return SerialFit.Applies;
        }

        if (serial is null)
        {
            return SerialFit.CannotTell;
        }

        var (first, last) = (From?.To(serial) ?? SerialOrder.Before, To?.To(serial) ?? SerialOrder.After);
        return first == SerialOrder.After || last == SerialOrder.Before ? SerialFit.DoesNotApply
            : first == SerialOrder.CannotBeCompared || last == SerialOrder.CannotBeCompared ? SerialFit.CannotTell
            : SerialFit.Applies;
    }

    /// <summary>What this range has in common with another.</summary>
    public SerialOverlap With(SerialRange other)
    {
        if ((From ?? To) is not { } here)
        {
            return new SerialOverlap.Shared(other);
        }

        if ((other.From ?? other.To) is not { } there)
        {
            return new SerialOverlap.Shared(this);
        }

        if (here.Series != there.Series)
        {
            return SerialOverlap.NotComparable;
        }

        // Build letters do not order: a break inside one running number (1200 A, 1200 B) touches, and only a person can say how.
        if (
            To is { } mine && other.From is { } theirs && mine.To(theirs) == SerialOrder.CannotBeCompared
            || From is { } start && other.To is { } end && start.To(end) == SerialOrder.CannotBeCompared
        )
        {
            return SerialOverlap.NotComparable;
        }

        var from = Later(From, other.From);
        var to = Earlier(To, other.To);
        return from is not null && to is not null && from.Number > to.Number
            ? SerialOverlap.Nothing
            : new SerialOverlap.Shared(new SerialRange(from, to));
    }

    /// <summary>Such as <c>QD 1000 to QD 1199</c>, <c>from QD 1200</c>, <c>every car</c>.</summary>
    public override string ToString() =>
        (From, To) switch
        {
            (null, null) => Texts.Say("book.serial-range.every-car"),
            ({ } from, null) => Texts.Say("book.serial-range.from", from),
            (null, { } to) => Texts.Say("book.serial-range.up-to", to),
            ({ } from, { } to) => from == to ? Texts.Say("book.serial-range.only", from) : Texts.Say("book.serial-range.to", from, to),
        };

    private static SerialNumber? Later(SerialNumber? a, SerialNumber? b) =>
        a is null ? b
        : b is null || a.Number >= b.Number ? a
        : b;

    private static SerialNumber? Earlier(SerialNumber? a, SerialNumber? b) =>
        a is null ? b
        : b is null || a.Number <= b.Number ? a
        : b;
}
