using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;

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
                model.Remarks.Miss(Texts.Say("road.front-fit.as-found-the-front-corner", RoadNames.Of(side), PartOf(reach.Limit)));
                continue;
            }

            RemarkSpacing(
                model.Remarks,
                Texts.Say("road.front-fit.upper", RoadNames.Of(side)),
                corner.UpperPath,
                corner.Parts.Upper,
                display
            );
            RemarkSpacing(
                model.Remarks,
                Texts.Say("road.front-fit.lower", RoadNames.Of(side)),
                corner.LowerPath,
                corner.Parts.Lower,
                display
            );
            RemarkTrunnion(model.Remarks, side, found, state);
        }
    }

    /// <summary>What runs out, in words.</summary>
    public static string PartOf(ReachLimit limit) =>
        limit switch
        {
            ReachLimit.LowerArm => Texts.Say("road.front-fit.the-lower-arm-does-not"),
            ReachLimit.UpperArm => Texts.Say("road.front-fit.the-upper-arm-and-the"),
            ReachLimit.TrackRod => Texts.Say("road.front-fit.the-track-rod-and-the"),
            ReachLimit.CentreLink => Texts.Say("road.front-fit.the-centre-link-does-not"),
            _ => Texts.Say("road.front-fit.a-figure-is-missing-or"),
        };

    private static void RemarkSpacing(RoadRemarks remarks, string arm, ArmPath path, ArmShape shape, RoadDisplay display)
    {
        var misfit = Vector3.Distance(path.FrontPivot, path.RearPivot) - shape.EyeSpacingMetres;
        if (shape.Make == ArmMake.OnePiece && Math.Abs(misfit) > ForcedMetres)
        {
            var how = misfit > 0 ? Texts.Say("road.front-fit.further-apart") : Texts.Say("road.front-fit.closer-together");
            remarks.Assume(Texts.Say("road.front-fit.the-arms-pivots-are-than", arm, display.LengthSize(misfit), how));
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
            remarks.Assume(Texts.Say("road.front-fit.the-trunnion-would-be-twisted", RoadNames.Of(side), RoadDisplay.Size(twist)));
        }
    }
}
