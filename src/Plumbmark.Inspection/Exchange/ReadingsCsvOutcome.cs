using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;

namespace Plumbmark.Inspection.Exchange;

/// <summary>What became of reading a CSV file of readings: accepted as a whole, or refused with every fault.</summary>
public abstract record ReadingsCsvOutcome
{
    private ReadingsCsvOutcome() { }

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(Func<Accepted, T> accepted, Func<IReadOnlyList<Fault>, T> refused) =>
        this switch
        {
            Accepted a => accepted(a),
            Refused r => refused(r.Faults),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>Every row is a reading.</summary>
    /// <param name="Readings">The readings that the car does not have yet, in the order of the file.</param>
    /// <param name="NewPoints">Points that the readings name and the car does not have; empty unless asked for.</param>
    /// <param name="AlreadyThere">How many rows the car has already, word for word.</param>
    /// <param name="UnusedColumns">Heads of columns that mean nothing here.</param>
    public sealed record Accepted(
        IReadOnlyList<Reading> Readings,
        IReadOnlyList<FramePoint> NewPoints,
        int AlreadyThere,
        IReadOnlyList<string> UnusedColumns
    ) : ReadingsCsvOutcome;

    /// <summary>Something is wrong; nothing is taken.</summary>
    /// <param name="Faults">Every fault, in the order of the file.</param>
    public sealed record Refused(IReadOnlyList<Fault> Faults) : ReadingsCsvOutcome;
}
