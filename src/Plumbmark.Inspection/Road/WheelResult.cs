using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Road;

/// <summary>One result of the wheel check, from what was read at the wheels. Radians or metres. Not what the frame would give; that is <see cref="RoadFigure"/>.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Wheel">Of which wheel; null for a pair, a side or the car.</param>
/// <param name="Side">Of which side; null otherwise.</param>
/// <param name="Axle">Of which pair; null otherwise.</param>
/// <param name="Value">The value.</param>
/// <param name="U">Standard uncertainty (k = 1).</param>
/// <param name="Book">What the book asks; null when it asks nothing.</param>
/// <param name="ProbabilityWithin">Probability of being within the book's limits; null without limits.</param>
/// <param name="Verdict">The verdict, all figures and wheel readings judged together; null without limits.</param>
/// <param name="Readings">The readings it is made from.</param>
/// <param name="Remarks">What the person should know of it: run-out, a short form's cost.</param>
public sealed record WheelResult(
    FigureKind Kind,
    WheelPlace? Wheel,
    Side? Side,
    Axle? Axle,
    double Value,
    double U,
    AskedFigure? Book,
    double? ProbabilityWithin,
    Verdict? Verdict,
    IReadOnlyList<string> Readings,
    IReadOnlyList<string> Remarks
);
