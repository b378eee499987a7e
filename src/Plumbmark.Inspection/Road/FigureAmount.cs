using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>A book figure's amount: an angle, a length, or toe as a length at a diameter.</summary>
public abstract record FigureAmount
{
    private FigureAmount() { }

    /// <summary>The amount in radians or metres.</summary>
    public double Si =>
        this switch
        {
            OfAngle a => a.Angle.Radians,
            OfLength l => l.Length.Metres,
            OfToe t => RimReading.TotalToeIn(t.BehindMinusAhead.Metres, t.Diameter.Metres),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>An angle.</summary>
    /// <param name="Angle">The angle.</param>
    public sealed record OfAngle(Angle Angle) : FigureAmount;

    /// <summary>A length.</summary>
    /// <param name="Length">The length.</param>
    public sealed record OfLength(Length Length) : FigureAmount;

    /// <summary>Both wheels' toe-in as a length at a diameter.</summary>
    /// <param name="BehindMinusAhead">How much wider apart behind than ahead.</param>
    /// <param name="Diameter">Where it is measured: the rim's or the tread's diameter.</param>
    public sealed record OfToe(Length BehindMinusAhead, Length Diameter) : FigureAmount;
}
