using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Floor.Levelling;
using Plumbmark.Inspection.Press;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Inspection.Car;

/// <summary>Everything known about one car, as it is written to and read from a car file.</summary>
/// <param name="Units">The unit of a length written as a bare number: inch or millimetre.</param>
/// <param name="Car">Which car.</param>
/// <param name="Tools">What was measured with.</param>
/// <param name="Frame">Points and limits.</param>
/// <param name="Readings">Every reading, in the order taken, those taken back included.</param>
public sealed record CarFile(LengthUnit Units, CarIdentity Car, IReadOnlyList<Tool> Tools, Frame Frame, IReadOnlyList<Reading> Readings)
{
    /// <summary>The suspension and what was read of the wheels; null when nothing is told.</summary>
    public RoadSection? Road { get; init; }

    /// <summary>How the frame stood when it was measured; null when nothing is told.</summary>
    public LevelSection? Level { get; init; }

    /// <summary>Photos of points and readings; empty when there are none.</summary>
    public IReadOnlyList<PhotoOf> Photos { get; init; } = [];

    /// <summary>What the file calls itself.</summary>
    public const string Format = "plumbmark-car";

    /// <summary>The version of the format that this program writes.</summary>
    public const int Version = 1;

    /// <summary>Parts that are being straightened, or were.</summary>
    public IReadOnlyList<PressJob> Press { get; init; } = [];

    /// <summary>A car with nothing known but its name.</summary>
    public static CarFile Named(string name, LengthUnit units) => new(units, new CarIdentity(name), [], Frame.Empty, []);

    /// <summary>Loose parts on the bench; empty when there are none.</summary>
    public PartsSection Parts { get; init; } = PartsSection.Empty;

    /// <summary>Book pages kept with the car; empty when there are none.</summary>
    public BookSection Book { get; init; } = BookSection.Empty;

    /// <summary>The readings that stand: those not taken back.</summary>
    public IEnumerable<Reading> StandingReadings => Readings.Where(r => r.Withdrawn is null);
}
