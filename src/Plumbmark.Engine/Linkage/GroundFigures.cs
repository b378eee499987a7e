namespace Plumbmark.Engine.Linkage;

/// <summary>
/// Where one wheel meets a level road and how its steering axis lies to that place. Own-side axes, metres. The road is taken as level through the place of contact.
/// <c>default</c> is not a wheel.
/// </summary>
/// <param name="Contact">The lowest place of the loaded tyre in the wheel's middle plane, metres.</param>
/// <param name="ScrubRadiusMetres">
/// How far inboard of the contact the steering axis meets the road, measured along the wheel's axis projected on the road; positive when it meets inboard.
/// </param>
/// <param name="TrailMetres">How far ahead of the contact the steering axis meets the road, along the wheel's heading; positive ahead.</param>
/// <param name="AxisOffsetAtHubMetres">How far inboard of the wheel centre the steering axis passes at the wheel centre's height, along the wheel's axis; positive inboard.</param>
public readonly record struct GroundFigures(Vector3 Contact, double ScrubRadiusMetres, double TrailMetres, double AxisOffsetAtHubMetres)
{
    /// <summary>The figures of a corner in one position.</summary>
    /// <param name="state">The position.</param>
    /// <param name="loadedRadiusMetres">Wheel centre to road along the wheel's plane, tyre loaded, metres.</param>
    public static GroundFigures Of(in CornerState state, double loadedRadiusMetres)
    {
        var contact = state.WheelCentre + (loadedRadiusMetres * DownIn(state.SpinAxis));
        var outboard = new Vector3(state.SpinAxis.X, state.SpinAxis.Y, 0).Direction;
        var ahead = Vector3.Cross(outboard, Vector3.Up);
        var atRoad = contact - AxisAt(state, contact.Z);
        var atHub = state.WheelCentre - AxisAt(state, state.WheelCentre.Z);
        return new(contact, Vector3.Dot(atRoad, outboard), -Vector3.Dot(atRoad, ahead), Vector3.Dot(atHub, outboard));
    }

    // The steepest downward direction within the wheel's plane.
    private static Vector3 DownIn(Vector3 spinAxis) => Vector3.Across(-Vector3.Up, spinAxis).Direction;

    private static Vector3 AxisAt(in CornerState state, double height) =>
        state.UpperJoint + (((height - state.UpperJoint.Z) / state.SteeringAxis.Z) * state.SteeringAxis);
}
