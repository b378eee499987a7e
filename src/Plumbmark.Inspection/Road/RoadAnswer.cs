using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Road;

/// <summary>Everything the Road can say of a car: the one answer that the page, the sheet and <c>plumbmark road</c> show.</summary>
/// <remarks>Radians and metres; every u is a standard uncertainty (k = 1). A list is empty when there is nothing to say, never when something failed.</remarks>
public sealed record RoadAnswer
{
    /// <summary>The verdict on what the wheels do, by frame, parts and wheel check.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>The answer in one sentence.</summary>
    public required string Headline { get; init; }

    /// <summary>The reasons, most important first.</summary>
    public required IReadOnlyList<string> Why { get; init; }

    /// <summary>The figures as frame and parts would give them.</summary>
    public required IReadOnlyList<RoadFigure> Figures { get; init; }

    /// <summary>What the adjusters of each side can do; empty when nothing can be set or nothing is asked.</summary>
    public required IReadOnlyList<SideSettings> Settings { get; init; }

    /// <summary>How the steering axes meet the road.</summary>
    public required IReadOnlyList<GroundAnswer> Ground { get; init; }

    /// <summary>Each side through its travel, as drawn.</summary>
    public required IReadOnlyDictionary<Side, IReadOnlyList<CurvePoint>> DrawnCurves { get; init; }

    /// <summary>Each side through its travel, as found.</summary>
    public required IReadOnlyDictionary<Side, IReadOnlyList<CurvePoint>> FoundCurves { get; init; }

    /// <summary>Toe-out on turns.</summary>
    public required IReadOnlyList<TurnPoint> Turns { get; init; }

    /// <summary>Both front corners for a drawing.</summary>
    public required IReadOnlyList<CornerSketch> Sketches { get; init; }

    /// <summary>The rear wheels' stance as found, for a drawing; null without a rear.</summary>
    public required RearSketch? RearSketch { get; init; }

    /// <summary>The wheel check's results.</summary>
    public required IReadOnlyList<WheelResult> Wheels { get; init; }

    /// <summary>Remarks on the wheel check as a whole.</summary>
    public required IReadOnlyList<string> WheelRemarks { get; init; }

    /// <summary>The linear uncertainties checked by trial; empty when that was not asked for.</summary>
    public required IReadOnlyList<TrialCheck> Trials { get; init; }

    /// <summary>What is not measured and would sharpen the answer most, largest first.</summary>
    public required IReadOnlyList<UnmeasuredShare> Unmeasured { get; init; }

    /// <summary>What is missing for a full answer.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    /// <summary>What was assumed.</summary>
    public required IReadOnlyList<string> Assumed { get; init; }

    /// <summary>The cautions that go with every answer of the Road.</summary>
    public IReadOnlyList<string> Cautions { get; } = RoadCautions.All;
}
