using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Comparing;

/// <summary>A quantity that is zero in an undamaged frame, however the frame lies: coordinates less what they should be.</summary>
/// <param name="Kind">What is compared.</param>
/// <param name="Subject">The pair's number (middle, stagger, level) or the point's (book).</param>
/// <param name="Terms">The coordinates it is made of.</param>
/// <param name="Expected">What the terms should add up to, metres.</param>
/// <param name="Lie">What the frame's lie adds per unit: forward, left, turn in plan, up, nose up, left side up.</param>
internal sealed record Contrast(ContrastKind Kind, int Subject, IReadOnlyList<Term> Terms, double Expected, double[] Lie)
{
    /// <summary>How many numbers tell how a frame lies.</summary>
    public const int LieCount = 6;

    /// <summary>The subject of a contrast that concerns more than one pair or point.</summary>
    public const int NoSubject = -1;

    /// <summary>Whether it says how the frame lies. Stagger does not: the centre line is the line through the middles of the pairs.</summary>
    public bool TellsLie => Kind != ContrastKind.Stagger;

    /// <summary>Whether it is about heights.</summary>
    public bool IsHeight => Kind is ContrastKind.Level or ContrastKind.BookZ or ContrastKind.Sag;

    /// <summary>Whether it compares with the book.</summary>
    public bool IsBook => Kind is ContrastKind.BookX or ContrastKind.BookY or ContrastKind.BookZ;

    /// <summary>What a displacement of the frame's coordinates adds to it.</summary>
    public double ChangeBy(double[] displacement)
    {
        var sum = 0.0;
        foreach (var term in Terms)
        {
            sum += term.Factor * displacement[term.Coordinate];
        }

        return sum;
    }
}
