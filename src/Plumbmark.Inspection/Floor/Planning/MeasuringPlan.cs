namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>What to measure on a frame, from nothing or from where the readings stand, until everything that can be settled is settled.</summary>
/// <param name="Readings">The readings in walking order.</param>
/// <param name="Lengths">How many tape lengths.</param>
/// <param name="Heights">How many heights.</param>
/// <param name="DropsPerPoint">Drops of the point that is dropped most.</param>
/// <param name="Minutes">Minutes of work expected.</param>
/// <param name="SettlesToMetres">The limit it settles to.</param>
/// <param name="IsComplete">Whether it settles everything; false when some of it cannot be settled by any reading.</param>
/// <param name="Sentence">The plan in one sentence.</param>
public sealed record MeasuringPlan(
    IReadOnlyList<NextReading> Readings,
    int Lengths,
    int Heights,
    int DropsPerPoint,
    double Minutes,
    double SettlesToMetres,
    bool IsComplete,
    string Sentence
);
