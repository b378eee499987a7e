using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Car;

/// <summary>What became of reading a car file: accepted as a whole, or refused with every fault. Nothing is accepted in part.</summary>
public abstract record CarFileOutcome
{
    private CarFileOutcome() { }

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(Func<CarFile, T> accepted, Func<IReadOnlyList<Fault>, T> refused) =>
        this switch
        {
            Accepted a => accepted(a.File),
            Refused r => refused(r.Faults),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The file is a car.</summary>
    /// <param name="File">The car.</param>
    public sealed record Accepted(CarFile File) : CarFileOutcome;

    /// <summary>The file is not a car, or contradicts itself.</summary>
    /// <param name="Faults">Every fault, in the order of the file.</param>
    public sealed record Refused(IReadOnlyList<Fault> Faults) : CarFileOutcome;
}
