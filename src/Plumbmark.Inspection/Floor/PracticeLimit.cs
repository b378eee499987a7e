using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>A limit that the trade uses, with where it is from. Never a factory limit of the user's car: that can only come from its own book.</summary>
/// <param name="Name">What it is called in a list to choose from.</param>
/// <param name="Limits">The limits, with <see cref="LimitSource.Practice"/> and the source in their note.</param>
public sealed record PracticeLimit(string Name, Limits Limits)
{
    /// <summary>The limits to choose from, tightest first.</summary>
    public static IReadOnlyList<PracticeLimit> All { get; } =
    [
        Of(Texts.Say("floor.practice-limit.pick-ups-as-wanted-1"), Inches(1, 16), Texts.Say("floor.practice-limit.wanted-side-to-side-at")),
        Of(
            Texts.Say("floor.practice-limit.restorers-square-1-8-in"),
            Inches(1, 8),
            Texts.Say("floor.practice-limit.what-restorers-call-square-common")
        ),
        Of(
            Texts.Say("floor.practice-limit.army-truck-0-12-in"),
            Length.FromInches(0.12m),
            Texts.Say("floor.practice-limit.any-frame-dimension-and-points")
        ),
        Of(Texts.Say("floor.practice-limit.truck-of-1967-3-16"), Inches(3, 16), Texts.Say("floor.practice-limit.left-and-right-to-the")),
        Of(Texts.Say("floor.practice-limit.army-bow-limit-1-4"), Inches(1, 4), Texts.Say("floor.practice-limit.bow-points-to-the-centre")),
    ];

    /// <summary>What is taken when the trade's limit is asked for and none is chosen: what restorers call square.</summary>
    public static PracticeLimit Usual => All[1];

    private static Length Inches(int numerator, int denominator) =>
        Length.FromFraction(Rational.Of(numerator, denominator), LengthUnit.Inch);

    private static PracticeLimit Of(string name, Length limit, string note) =>
        new(name, new Limits(limit, limit, limit, LimitSource.Practice, note));
}
