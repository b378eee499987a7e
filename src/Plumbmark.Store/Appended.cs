using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Store;

/// <summary>What became of sending acts to a car's journal. When it is told, it is on the disk.</summary>
public abstract record Appended
{
    private Appended() { }

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(Func<Kept, T> kept, Func<KeptBefore, T> keptBefore, Func<IReadOnlyList<Fault>, T> refused, Func<T> noSuchCar) =>
        this switch
        {
            Kept a => kept(a),
            KeptBefore a => keptBefore(a),
            Refused a => refused(a.Faults),
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

    /// <summary>
    /// The car would contradict itself, such as a reading to a point that is no longer there: its file could not be read back. Nothing was written.
    /// </summary>
    /// <param name="Faults">Why, in the words of the car file.</param>
    public sealed record Refused(IReadOnlyList<Fault> Faults) : Appended;

    /// <summary>There is no such car.</summary>
    public sealed record NoSuchCar : Appended;
}
