using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Road;

/// <summary>One angle or length of the wheels as the frame and the parts would give it, held against the book. Radians or metres; angles as <see cref="FigureKind"/> says.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Side">Of which side; null for the car. For the outer wheel's turn: the side of the inner wheel.</param>
/// <param name="Drawn">What the drawing gives.</param>
/// <param name="Value">What the measured places and parts give.</param>
/// <param name="U">Standard uncertainty of the value (k = 1), carried linearly from what was measured and from the allowance for what was not.</param>
/// <param name="UUnmeasured">The part of it that stands for what nobody has measured.</param>
/// <param name="Book">What the book asks; null when it asks nothing.</param>
/// <param name="ProbabilityWithin">Probability of being within the book's limits; null without limits.</param>
/// <param name="Verdict">The verdict, all figures and wheel readings judged together; null without limits.</param>
/// <param name="Contributions">What makes the difference from the drawing, largest first.</param>
public sealed record RoadFigure(
    FigureKind Kind,
    Side? Side,
    double Drawn,
    double Value,
    double U,
    double UUnmeasured,
    AskedFigure? Book,
    double? ProbabilityWithin,
    Verdict? Verdict,
    IReadOnlyList<Contribution> Contributions
)
{
    /// <summary>How far the mean over everything uncertain lies from <see cref="Value"/>, because the road from place to angle is bent; what slopes alone cannot show.</summary>
    public double Bow { get; init; }

    /// <summary>Whether the drawing itself is beyond what the book asks: a slip in entering it, and then there is no verdict.</summary>
    public bool IsDrawingBeyondBook { get; init; }

    // Finer than two seconds of arc, or a hundredth of a millimetre, nothing is shown.
    private const double LeastShown = 1e-5;

    /// <summary>Whether it depends on nothing that is measured or allowed for: the drawing's own number, which no ± belongs to.</summary>
    public bool IsAsDrawn => U < LeastShown && Math.Abs(Value - Drawn) < LeastShown;

    /// <summary>The mean over everything uncertain: what the probability of being within is taken about.</summary>
    public double Mean => Value + Bow;
}
