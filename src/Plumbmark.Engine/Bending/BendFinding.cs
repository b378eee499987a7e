namespace Plumbmark.Engine.Bending;

/// <summary>What the readings along a part say about its bend: straight, a kink, a sweep, or too little to tell.</summary>
public abstract record BendFinding
{
    private BendFinding() { }

    /// <summary>Too few readings, or too short a stretch of them, to place a bend.</summary>
    /// <param name="Readings">How many there are at different stations.</param>
    /// <param name="Needed">How many it takes.</param>
    public sealed record TooFew(int Readings, int Needed) : BendFinding;

    /// <summary>No bend that the readings can show.</summary>
    /// <param name="SmallestAngleRadians">A kink in the middle of the readings smaller than this would not show (95 %), rad.</param>
    public sealed record Straight(double SmallestAngleRadians) : BendFinding;

    /// <summary>The part turns at one place.</summary>
    /// <param name="Bend">The bend, of length 0.</param>
    /// <param name="Odds">How many times more likely than a sweep, from the two fits (BIC); 1 is no preference.</param>
    /// <param name="Misfit">Chi-square of the readings about the fit over its degrees of freedom; well above 1, the shape is something else.</param>
    public sealed record Kink(Bend Bend, double Odds, double Misfit) : BendFinding;

    /// <summary>The part turns over a length.</summary>
    /// <param name="Bend">The bend.</param>
    /// <param name="Odds">How many times more likely than a kink, from the two fits (BIC); 1 is no preference.</param>
    /// <param name="Misfit">Chi-square of the readings about the fit over its degrees of freedom; well above 1, the shape is something else.</param>
    public sealed record Sweep(Bend Bend, double Odds, double Misfit) : BendFinding;

    /// <summary>One answer for each case.</summary>
    public T Match<T>(Func<TooFew, T> tooFew, Func<Straight, T> straight, Func<Kink, T> kink, Func<Sweep, T> sweep) =>
        this switch
        {
            TooFew f => tooFew(f),
            Straight f => straight(f),
            Kink f => kink(f),
            Sweep f => sweep(f),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
