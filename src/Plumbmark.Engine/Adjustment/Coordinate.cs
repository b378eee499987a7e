namespace Plumbmark.Engine.Adjustment;

/// <summary>What is known beforehand about one coordinate of a point; what the readings say about it is in <see cref="PointEstimate"/>.</summary>
/// <remarks>A coordinate that no reading touches is no unknown, whatever is said here: it is absent from the result.</remarks>
public abstract record Coordinate
{
    private Coordinate() { }

    /// <summary>Nothing is known: the readings decide.</summary>
    public static Coordinate Unknown { get; } = new Free();

    /// <summary>Nothing is known: the readings decide.</summary>
    public sealed record Free : Coordinate;

    /// <summary>Known without error, and part of the datum.</summary>
    /// <param name="Metres">The value, metres.</param>
    public sealed record Fixed(double Metres) : Coordinate;

    /// <summary>Known with a standard uncertainty: it enters the fit like one more reading.</summary>
    /// <param name="Metres">The value, metres.</param>
    /// <param name="SigmaMetres">Its standard uncertainty, metres; greater than zero.</param>
    public sealed record Uncertain(double Metres, double SigmaMetres) : Coordinate;

    /// <summary>Takes the one road that applies.</summary>
    public T Match<T>(Func<Free, T> free, Func<Fixed, T> @fixed, Func<Uncertain, T> uncertain) =>
        this switch
        {
            Free c => free(c),
            Fixed c => @fixed(c),
            Uncertain c => uncertain(c),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
