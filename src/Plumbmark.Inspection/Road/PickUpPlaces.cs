using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>Where the drawing puts each pick-up, in own-side axes: from the frame points' book places, else the other side's, else the mean of what was measured on both sides.</summary>
internal sealed class PickUpPlaces(Frame frame, MeasuredPlaces measured, RoadRemarks remarks)
{
    private static readonly string[] s_axes = ["forward", "left", "height"];
    private readonly Dictionary<string, FramePoint> _points = frame.Points.ToDictionary(p => p.Id, StringComparer.Ordinal);

    /// <summary>The drawn place on one side; null, with a remark, when nothing tells.</summary>
    public Vector3? Drawn(PickUp? pickUp, Side side, string what)
    {
        if (pickUp is null)
        {
            remarks.Miss(Texts.Say("road.pick-up-places.the-place-of-is-not", what));
            return null;
        }

        return pickUp.Match(pair => OfPair(pair, side, what), place => OfPlace(place.Place, what));
    }

    /// <summary>A complete place of the drawing, left side; null, with a remark, when a coordinate is missing.</summary>
    public Vector3? OfPlace(Place? place, string what)
    {
        if (place is { X: { } x, Y: { } y, Z: { } z })
        {
            return new Vector3(x.Metres, y.Metres, z.Metres);
        }

        remarks.Miss(
            place is null
                ? Texts.Say("road.pick-up-places.the-place-of-is-not", what)
                : Texts.Say("road.pick-up-places.the-place-of-is-told", what)
        );
        return null;
    }

    private Vector3? OfPair(PickUp.AtPair pair, Side side, string what)
    {
        var xyz = new double[3];
        for (var axis = 0; axis < 3; axis++)
        {
            if (Coordinate(pair, side, axis) is not { } value)
            {
                remarks.Miss(Texts.Say("road.pick-up-places.nothing-tells-the-place-of", s_axes[axis], pair.Name, what));
                return null;
            }

            xyz[axis] = value;
        }

        return new Vector3(xyz[0], xyz[1], xyz[2]);
    }

    private double? Coordinate(PickUp.AtPair pair, Side side, int axis)
    {
        var (own, other) = (pair.PointOn(side), pair.PointOn(side == Side.Left ? Side.Right : Side.Left));
        if (Nominal(own, axis) is { } nominal)
        {
            return Outboard(side, axis) * nominal;
        }

        if (Nominal(other, axis) is { } mirrored)
        {
            return axis == 1 ? -Outboard(side, axis) * mirrored : mirrored;
        }

        if (measured.Value(own, axis) is not { } here || measured.Value(other, axis) is not { } there)
        {
            return null;
        }

        remarks.Assume(Texts.Say("road.pick-up-places.the-book-does-not-give", pair.Name));
        return axis == 1 ? Outboard(side, axis) * 0.5 * (here - there) : 0.5 * (here + there);
    }

    private double? Nominal(string point, int axis)
    {
        var place = _points.GetValueOrDefault(point)?.Nominal;
        return (
            axis switch
            {
                0 => place?.X,
                1 => place?.Y,
                _ => place?.Z,
            }
        )?.Metres;
    }

    // Own-side axes turn y round on the right and leave x and z alone.
    private static double Outboard(Side side, int axis) => side == Side.Right && axis == 1 ? -1 : 1;
}
