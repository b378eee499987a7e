using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Road;

/// <summary>Where the drawing puts a pick-up: at a pair of measured frame points, or at a place that was never measured.</summary>
public abstract record PickUp
{
    private PickUp() { }

    /// <summary>Answers with the case that applies.</summary>
    public T Match<T>(Func<AtPair, T> atPair, Func<AtPlace, T> atPlace)
    {
        ArgumentNullException.ThrowIfNull(atPair);
        ArgumentNullException.ThrowIfNull(atPlace);
        return this switch
        {
            AtPair p => atPair(p),
            AtPlace p => atPlace(p),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>A pair of frame points; the drawing's place is their nominal, and the Floor measures both.</summary>
    /// <param name="Name">The pair's name without <c>.L</c> and <c>.R</c>.</param>
    public sealed record AtPair(string Name) : PickUp
    {
        /// <summary>The frame point of one side.</summary>
        public string PointOn(Side side) => side == Side.Left ? $"{Name}.L" : $"{Name}.R";
    }

    /// <summary>A place known from the drawing alone, given for the left side.</summary>
    /// <param name="Place">The place.</param>
    public sealed record AtPlace(Place Place) : PickUp;
}
