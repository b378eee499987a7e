using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Floor;

/// <summary>The mark of a point, and what it means in words. Each differs in shape, so that nothing rests on colour.</summary>
internal enum PointSign
{
    True,
    Out,
    CannotTellYet,
    NoLimit,
    NotMeasured,
}

/// <summary>Draws the marks.</summary>
internal static class PointSigns
{
    public static PointSign Of(Seen seen) =>
        !seen.IsMeasured ? PointSign.NotMeasured
        : seen.Placed.Verdict is { } verdict ? For(verdict)
        : PointSign.NoLimit;

    public static PointSign For(Verdict verdict) =>
        verdict switch
        {
            Verdict.True => PointSign.True,
            Verdict.Out => PointSign.Out,
            Verdict.CannotTellYet => PointSign.CannotTellYet,
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    public static string Words(PointSign sign) =>
        sign switch
        {
            PointSign.True => "true",
            PointSign.Out => "out",
            PointSign.CannotTellYet => "can't tell yet",
            PointSign.NoLimit => Texts.Say("drawing.point-signs.no-verdict"),
            PointSign.NotMeasured => Texts.Say("drawing.point-signs.not-measured"),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    public static IEnumerable<Shape> Draw(PointSign sign, Spot at)
    {
        switch (sign)
        {
            case PointSign.True:
                return [new Shape.Circle(at, 4.5, Palette.True)];
            case PointSign.Out:
                Spot[] diamond = [at.Moved(0, -8), at.Moved(8, 0), at.Moved(0, 8), at.Moved(-8, 0)];
                return [new Shape.Path(diamond, true, Palette.Out), new Shape.Line(at.Moved(-4, 0), at.Moved(4, 0), Palette.OutBar)];
            case PointSign.CannotTellYet:
                return [new Shape.Circle(at, 6.5, Palette.CannotTell), new Shape.Words(at.Moved(0, 3.4), "?", Palette.Sign, Anchor.Middle)];
            case PointSign.NoLimit:
                Spot[] square = [at.Moved(-4, -4), at.Moved(4, -4), at.Moved(4, 4), at.Moved(-4, 4)];
                return [new Shape.Path(square, true, Palette.NoVerdict)];
            case PointSign.NotMeasured:
                return [new Shape.Circle(at, 5, Palette.Hollow)];
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }
}
