namespace Plumbmark.Store;

/// <summary>What became of sending acts to a car's journal. When it is told, it is on the disk.</summary>
public abstract record Appended
{
    private Appended() { }

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(Func<Kept, T> kept, Func<KeptBefore, T> keptBefore, Func<T> noSuchCar) =>
        this switch
        {
            Kept a => kept(a),
            KeptBefore a => keptBefore(a),
            NoSuchCar => noSuchCar(),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The acts were written, all of them.</summary>
    /// <param name="Car">The car after them.</param>
    /// <param name="Entries">What was written; empty when there was nothing to write.</param>
    public sealed record Kept(OpenCar Car, IReadOnlyList<KeptEntry> Entries) : Appended;

    /// <summary>The same was sent before and is kept once.</summary>
    /// <param name="Car">The car as it is.</param>
    public sealed record KeptBefore(OpenCar Car) : Appended;

    /// <summary>There is no such car.</summary>
    public sealed record NoSuchCar : Appended;
}
