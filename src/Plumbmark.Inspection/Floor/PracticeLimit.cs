using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor;

/// <summary>A limit that the trade uses, with where it is from. Never a factory limit of the user's car: that can only come from its own book.</summary>
/// <param name="Name">What it is called in a list to choose from.</param>
/// <param name="Limits">The limits, with <see cref="LimitSource.Practice"/> and the source in their note.</param>
public sealed record PracticeLimit(string Name, Limits Limits)
{
    /// <summary>The limits to choose from, tightest first.</summary>
    public static IReadOnlyList<PracticeLimit> All { get; } =
    [
        Of(
            "pick-ups as wanted: 1/16 in",
            Inches(1, 16),
            "wanted side to side at suspension pick-ups, and what frame shops pull to; common practice, no source"
        ),
        Of("restorer's square: 1/8 in", Inches(1, 8), "what restorers call square; common practice, no source"),
        Of(
            "army truck: 0.12 in",
            Length.FromInches(0.12m),
            "any frame dimension and points to the centre line of a truck; US Army TM 9-2320-289-34, p. 9-3"
        ),
        Of(
            "truck of 1967: 3/16 in",
            Inches(3, 16),
            "left and right to the centre line; from memory of a US truck maker's shop manual of 1967"
        ),
        Of(
            "army bow limit: 1/4 in",
            Inches(1, 4),
            "bow points to the centre string, right against left; US Army TM 9-2320-387-24-2, (b)(7)"
        ),
    ];

    /// <summary>What is taken when the trade's limit is asked for and none is chosen: what restorers call square.</summary>
    public static PracticeLimit Usual => All[1];

    private static Length Inches(int numerator, int denominator) =>
        Length.FromFraction(Rational.Of(numerator, denominator), LengthUnit.Inch);

    private static PracticeLimit Of(string name, Length limit, string note) =>
        new(name, new Limits(limit, limit, limit, LimitSource.Practice, note));
}
