using Plumbmark.Drawing.Floor;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Drawing.Road;

/// <summary>A view of the front corners in which what was found is drawn further from its drawing than it is, by one round number.</summary>
internal sealed class Elevation
{
    // Beyond this an exaggerated joint would leave its own arm.
    private const double LargestShift = 16;
    private readonly Func<Vector3, (double Across, double Up)> _project;
    private readonly Spot _origin;

    private Elevation(Func<Vector3, (double, double)> project, Spot origin, double scale, int times)
    {
        (_project, _origin, UnitsPerMetre, Times) = (project, origin, scale, times);
    }

    /// <summary>Picture units per metre.</summary>
    public double UnitsPerMetre { get; }

    /// <summary>How many times too large deviations are drawn.</summary>
    public int Times { get; }

    /// <summary>Fits corners into a box.</summary>
    /// <param name="corners">The corners.</param>
    /// <param name="project">From a place to metres across (to the right) and up.</param>
    /// <param name="corner">The box's top left corner.</param>
    /// <param name="width">Its width.</param>
    /// <param name="tallest">Its greatest height.</param>
    /// <param name="extra">Further places that must be inside: the wheels' outlines.</param>
    public static (Elevation View, double Height) Fit(
        IReadOnlyList<CornerSketch> corners,
        Func<Vector3, (double Across, double Up)> project,
        Spot corner,
        double width,
        double tallest,
        IEnumerable<Vector3> extra
    )
    {
        var spots = corners.SelectMany(c => Places(c.Drawn)).Concat(extra).Select(project).ToList();
        var (left, right) = (spots.Min(s => s.Across), spots.Max(s => s.Across));
        var (bottom, top) = (spots.Min(s => s.Up), spots.Max(s => s.Up));
        var scale = Math.Min((width - (2 * LargestShift)) / (right - left), (tallest - (2 * LargestShift)) / (top - bottom));
        var largest = corners.Max(c => Places(c.Drawn).Zip(Places(c.Found), Vector3.Distance).Max());
        var middle = corner.X + (width / 2);
        var origin = new Spot(middle - ((left + right) / 2 * scale), corner.Y + LargestShift + (top * scale));
        return (
            new Elevation(project, origin, scale, largest < 1e-6 ? 1 : Exaggeration.Of(largest, scale, LargestShift)),
            ((top - bottom) * scale) + (2 * LargestShift)
        );
    }

    /// <summary>A place as drawn.</summary>
    public Spot At(Vector3 place)
    {
        var (across, up) = _project(place);
        return new(_origin.X + (across * UnitsPerMetre), _origin.Y - (up * UnitsPerMetre));
    }

    /// <summary>A place as found, its deviation exaggerated.</summary>
    public Spot Found(Vector3 drawn, Vector3 found) => At(drawn + (Times * (found - drawn)));

    /// <summary>Arms, upright, stub axle and track rod of a corner.</summary>
    public IEnumerable<Shape> Links(CornerSketch corner, bool isDrawn, Ink ink)
    {
        Spot S(Func<CornerSketch.Places, Vector3> of) => isDrawn ? At(of(corner.Drawn)) : Found(of(corner.Drawn), of(corner.Found));
        return
        [
            new Shape.Path([S(p => p.UpperFront), S(p => p.UpperJoint), S(p => p.UpperRear)], false, ink),
            new Shape.Path([S(p => p.LowerFront), S(p => p.LowerJoint), S(p => p.LowerRear)], false, ink),
            new Shape.Line(S(p => p.UpperJoint), S(p => p.LowerJoint), ink),
            new Shape.Line(S(OnAxis), S(p => p.WheelCentre), ink),
            new Shape.Line(S(p => p.TrackRodInner), S(p => p.TrackRodOuter), ink),
        ];
    }

    /// <summary>Every joint of a corner.</summary>
    public static IEnumerable<Vector3> Places(CornerSketch.Places p) =>
        [p.UpperFront, p.UpperRear, p.LowerFront, p.LowerRear, p.UpperJoint, p.LowerJoint, p.TrackRodInner, p.TrackRodOuter, p.WheelCentre];

    // The steering axis at the wheel centre's height: where the stub axle springs from.
    private static Vector3 OnAxis(CornerSketch.Places p)
    {
        var share = (p.WheelCentre.Z - p.LowerJoint.Z) / (p.UpperJoint.Z - p.LowerJoint.Z);
        return p.LowerJoint + (share * (p.UpperJoint - p.LowerJoint));
    }
}
