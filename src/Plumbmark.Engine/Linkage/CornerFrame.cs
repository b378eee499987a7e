namespace Plumbmark.Engine.Linkage;

/// <summary>
/// Where the frame holds one front corner: the four pivots and, with the steering straight ahead, the track rod's inner joint; own-side axes (y outboard), metres.
/// Not the parts that hang there; those are <see cref="CornerParts"/>.
/// </summary>
/// <param name="UpperFront">Front pivot of the upper arm.</param>
/// <param name="UpperRear">Rear pivot of the upper arm.</param>
/// <param name="LowerFront">Front pivot of the lower arm.</param>
/// <param name="LowerRear">Rear pivot of the lower arm.</param>
/// <param name="TrackRodInner">Inner joint of the track rod.</param>
public readonly record struct CornerFrame(
    Vector3 UpperFront,
    Vector3 UpperRear,
    Vector3 LowerFront,
    Vector3 LowerRear,
    Vector3 TrackRodInner
)
{
    /// <summary>The frame's part of a drawing.</summary>
    public static CornerFrame Of(CornerPoints drawn)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        return new(drawn.UpperFront, drawn.UpperRear, drawn.LowerFront, drawn.LowerRear, drawn.TrackRodInner);
    }

    /// <summary>The same pick-ups all moved by one displacement, metres.</summary>
    public CornerFrame MovedBy(Vector3 displacement) =>
        new(
            UpperFront + displacement,
            UpperRear + displacement,
            LowerFront + displacement,
            LowerRear + displacement,
            TrackRodInner + displacement
        );
}
