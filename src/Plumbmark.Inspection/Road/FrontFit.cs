using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>Says what does not fit at the front: arms forced onto their pivots, a trunnion twisted, a corner that does not go together.</summary>
internal static class FrontFit
{
    // Below these nobody would feel it going on: common practice, no source.
    private const double ForcedMetres = 0.8e-3;
    private const double TwistedRadians = 0.5 * Math.PI / 180;

    /// <summary>Adds to a model's remarks.</summary>
    public static void Remark(RoadModel model, RoadDisplay display)
    {
        if (model.Kinematics.Front is null)
        {
            return;
        }

        foreach (var side in new[] { Side.Left, Side.Right })
        {
            var found = model.Kinematics.CornerOf(side, model.Deviations.Amounts);
            var corner = found.Corner;
            var reach = corner.Solve(found.Drawn.WheelCentre.Z, corner.Frame.TrackRodInner, out var state);
            if (!reach.IsReached)
            {
                model.Remarks.Miss(
                    $"As found, the {RoadNames.Of(side)} front corner does not go together at ride height: {PartOf(reach.Limit)}. Check the figures of its pick-ups and parts."
                );
                continue;
            }

            RemarkSpacing(model.Remarks, $"{RoadNames.Of(side)} upper", corner.UpperPath, corner.Parts.Upper, display);
            RemarkSpacing(model.Remarks, $"{RoadNames.Of(side)} lower", corner.LowerPath, corner.Parts.Lower, display);
            RemarkTrunnion(model.Remarks, side, found, state);
        }
    }

    /// <summary>What runs out, in words.</summary>
    public static string PartOf(ReachLimit limit) =>
        limit switch
        {
            ReachLimit.LowerArm => "the lower arm does not reach",
            ReachLimit.UpperArm => "the upper arm and the upright do not meet",
            ReachLimit.TrackRod => "the track rod and the steering lever do not meet",
            ReachLimit.CentreLink => "the centre link does not reach from the drop arm to the idler",
            _ => "a figure is missing or makes no sense",
        };

    private static void RemarkSpacing(RoadRemarks remarks, string arm, ArmPath path, ArmShape shape, RoadDisplay display)
    {
        var misfit = Vector3.Distance(path.FrontPivot, path.RearPivot) - shape.EyeSpacingMetres;
        if (shape.Make == ArmMake.OnePiece && Math.Abs(misfit) > ForcedMetres)
        {
            var how = misfit > 0 ? "further apart" : "closer together";
            remarks.Assume(
                $"The {arm} arm's pivots are {display.LengthSize(misfit)} {how} than its eyes as drawn: it would have to be forced on. Measure the arm, and do not force it."
            );
        }
    }

    private static void RemarkTrunnion(RoadRemarks remarks, Side side, CornerVariation found, in CornerState state)
    {
        var drawn = Engine.Linkage.Corner.Of(found.Drawn);
        if (
            found.Drawn.LowerEnd.ActsAsBallJoint
            || !drawn.Solve(found.Drawn.WheelCentre.Z, found.Drawn.TrackRodInner, out var drawnState).IsReached
        )
        {
            return;
        }

        var twist =
            Math.Asin(Vector3.Dot(found.Corner.LowerPath.Axis, state.SteeringAxis))
            - Math.Asin(Vector3.Dot(drawn.LowerPath.Axis, drawnState.SteeringAxis));
        if (Math.Abs(twist) > TwistedRadians)
        {
            remarks.Assume(
                $"The {RoadNames.Of(side)} trunnion would be twisted by {RoadDisplay.Size(twist)} against its pin: it binds, and the rubbers or the pivots take the difference."
            );
        }
    }
}
