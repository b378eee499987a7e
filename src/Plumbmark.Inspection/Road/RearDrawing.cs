using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Road;

/// <summary>The rear suspension as drawn.</summary>
public abstract record RearDrawing
{
    private RearDrawing() { }

    /// <summary>Answers with the case that applies.</summary>
    public T Match<T>(Func<LiveAxle, T> liveAxle, Func<TrailingArms, T> trailingArms)
    {
        ArgumentNullException.ThrowIfNull(liveAxle);
        ArgumentNullException.ThrowIfNull(trailingArms);
        return this switch
        {
            LiveAxle a => liveAxle(a),
            TrailingArms a => trailingArms(a),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>A live axle on two leaf springs.</summary>
    /// <param name="Eye">The springs' fixed eyes on the frame.</param>
    /// <param name="EyeToAxle">From the fixed eye back to the axle's centre line along the car, at ride height.</param>
    /// <param name="AxleAboveEye">How far the axle's centre line lies above the eyes; null when not known (only heights need it).</param>
    /// <param name="Track">Track at the wheel centres.</param>
    public sealed record LiveAxle(PickUp? Eye, Length? EyeToAxle, Length? AxleAboveEye, Length? Track) : RearDrawing;

    /// <summary>Semi-trailing arms.</summary>
    /// <param name="Inner">The arm's inner pivots on the frame.</param>
    /// <param name="Outer">The arm's outer pivots on the frame.</param>
    /// <param name="WheelCentre">The left wheel centre at ride height.</param>
    /// <param name="Camber">Camber as drawn.</param>
    /// <param name="ToeIn">Toe-in of one wheel as drawn.</param>
    public sealed record TrailingArms(PickUp? Inner, PickUp? Outer, Place? WheelCentre, Angle? Camber, Angle? ToeIn) : RearDrawing;
}
