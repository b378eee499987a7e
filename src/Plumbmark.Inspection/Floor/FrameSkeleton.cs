using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>Ready-made points for a frame nobody has drawn yet. A start to edit, not a statement about any car: its places are rough sketches.</summary>
public static class FrameSkeleton
{
    /// <summary>The fewest pairs a ladder can have here.</summary>
    public const int FewestPairs = 5;

    /// <summary>The most pairs a ladder can have here.</summary>
    public const int MostPairs = 10;

    // Front to rear. "Needed" is the least number of pairs at which the station appears.
    private static readonly (int Needed, string Label, PointRole Role, decimal XInches, decimal HalfWidthInches)[] s_stations =
    [
        (5, Texts.Say("floor.frame-skeleton.front-horn"), PointRole.Other, 112, 11),
        (5, Texts.Say("floor.frame-skeleton.front-wishbone-forward-pivot"), PointRole.Suspension, 92, 12),
        (5, Texts.Say("floor.frame-skeleton.front-wishbone-rearward-pivot"), PointRole.Suspension, 83, 12.5m),
        (7, Texts.Say("floor.frame-skeleton.engine-mount"), PointRole.Engine, 74, 11),
        (6, Texts.Say("floor.frame-skeleton.front-outrigger"), PointRole.Body, 62, 22),
        (8, Texts.Say("floor.frame-skeleton.middle-outrigger"), PointRole.Body, 42, 22),
        (5, Texts.Say("floor.frame-skeleton.rear-spring-front-eye"), PointRole.Spring, 24, 17),
        (9, Texts.Say("floor.frame-skeleton.axle-bump-stop"), PointRole.Other, 4, 16),
        (5, Texts.Say("floor.frame-skeleton.rear-spring-rear-eye"), PointRole.Spring, -16, 17.5m),
        (10, Texts.Say("floor.frame-skeleton.rear-crossmember-end"), PointRole.Body, -24, 15),
    ];

    /// <summary>A ladder frame of 5 to 10 pairs, lettered from the front; I is left out, because it is read as 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer or more pairs than that.</exception>
    public static IReadOnlyList<FramePoint> Ladder(int pairs, LengthUnit units)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pairs, FewestPairs);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(pairs, MostPairs);
        const string Letters = "ABCDEFGHJK";
        return
        [
            .. s_stations
                .Where(s => s.Needed <= pairs)
                .SelectMany(
                    (s, i) => Pair(Letters[i].ToString(), s.Label, s.Role, Rough(s.XInches, units), Rough(s.HalfWidthInches, units))
                ),
        ];
    }

    /// <summary>A left and a right point that mirror each other, sketched at equal distance from the centre line.</summary>
    public static IReadOnlyList<FramePoint> Pair(string name, string? label, PointRole role, Length? x, Length? halfWidth)
    {
        var (left, right) = ($"{name}.L", $"{name}.R");
        var isSketched = x is not null || halfWidth is not null;
        var zero = Length.FromNumber(0, (x ?? halfWidth ?? Length.Zero).Unit);
        Place? Sketch(Length? y) => isSketched ? new Place(x ?? zero, y, zero) : null;
        return
        [
            new FramePoint(left, right, role, Sketch(halfWidth), Label: label),
            new FramePoint(right, left, role, Sketch(-halfWidth), Label: label),
        ];
    }

    /// <summary>A rough length in the car's unit; whole centimetres where that is millimetres.</summary>
    private static Length Rough(decimal inches, LengthUnit units) =>
        Length.FromNumber(units == LengthUnit.Inch ? inches : decimal.Round(inches * 2.54m) * 10, units);
}
