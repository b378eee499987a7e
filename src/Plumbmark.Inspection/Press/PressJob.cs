using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Press;

/// <summary>Everything known about straightening one part: the part, what was measured, how it lies in the press, and each bite.</summary>
/// <param name="Id">Its name in the file.</param>
/// <param name="Part">The part.</param>
public sealed record PressJob(string Id, PressPart Part)
{
    /// <summary>The section where it is bent; null while not measured.</summary>
    public PressSection? Section { get; init; }

    /// <summary>Readings along it.</summary>
    public IReadOnlyList<ProfileLine> Lines { get; init; } = [];

    /// <summary>Readings across it, for twist.</summary>
    public IReadOnlyList<WindingReading> Winding { get; init; } = [];

    /// <summary>How far it was out before the first bite, each time it was measured.</summary>
    public IReadOnlyList<Length> OutBy { get; init; } = [];

    /// <summary>How it lies in the press; null while it is only planned.</summary>
    public PressSetUp? SetUp { get; init; }

    /// <summary>When to stop, and how well things are read.</summary>
    public PressLimits Limits { get; init; } = PressLimits.Usual;

    /// <summary>Every bite in order, those taken back included.</summary>
    public IReadOnlyList<BiteRecord> Bites { get; init; } = [];

    /// <summary>Every crack test in order.</summary>
    public IReadOnlyList<CrackTest> CrackTests { get; init; } = [];

    /// <summary>Anything else; null when nothing.</summary>
    public string? Note { get; init; }

    /// <summary>The bites that stand.</summary>
    public IEnumerable<BiteRecord> StandingBites => Bites.Where(b => b.Withdrawn is null);

    /// <summary>The same job described anew: its bites and crack tests stay.</summary>
    public PressJob DescribedAs(PressJob description) => description with { Bites = Bites, CrackTests = CrackTests };
}
