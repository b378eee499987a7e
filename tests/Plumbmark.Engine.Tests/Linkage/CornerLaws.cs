using CsCheck;
using Plumbmark.Engine.Linkage;
using static Plumbmark.Engine.Tests.Linkage.ReferenceCorner;

namespace Plumbmark.Engine.Tests.Linkage;

/// <summary>What holds for any double wishbone, tried on drawings that vary by up to 25 mm in every coordinate about the reference case.</summary>
public class CornerLaws
{
    private static readonly Gen<Vector3> s_shift = Gen.Select(
            Gen.Double[-0.025, 0.025],
            Gen.Double[-0.025, 0.025],
            Gen.Double[-0.025, 0.025]
        )
        .Select(v => new Vector3(v.Item1, v.Item2, v.Item3));

    private static readonly Gen<CornerPoints> s_drawing = Gen.Select(s_shift.Array[9], Gen.Double[-0.05, 0.05], Gen.Bool, Gen.Bool)
        .Select((shifts, camber, upperOnePiece, lowerOnePiece) => Shifted(shifts, camber, upperOnePiece, lowerOnePiece));

    private static readonly Gen<(CornerPoints Drawn, double Travel, double Rack)> s_case = Gen.Select(
        s_drawing,
        Gen.Double[-0.05, 0.05],
        Gen.Double[-0.03, 0.03]
    );

    [Fact]
    public void At_AnyTravelAndSteer_KeepsEveryLinkToABillionthOfAMillimetre() =>
        s_case.Sample(
            c =>
            {
                var corner = Corner.Of(c.Drawn);
                var inner = c.Drawn.TrackRodInner + (c.Rack * Vector3.Left);
                var state = Stand(corner, c.Drawn.WheelCentre.Z + c.Travel, inner);
                KeepsLength(c.Drawn.UpperFront, c.Drawn.UpperJoint, c.Drawn.UpperFront, state.UpperJoint);
                KeepsLength(c.Drawn.UpperRear, c.Drawn.UpperJoint, c.Drawn.UpperRear, state.UpperJoint);
                KeepsLength(c.Drawn.LowerFront, c.Drawn.LowerJoint, c.Drawn.LowerFront, state.LowerJoint);
                KeepsLength(c.Drawn.LowerRear, c.Drawn.LowerJoint, c.Drawn.LowerRear, state.LowerJoint);
                KeepsLength(c.Drawn.UpperJoint, c.Drawn.LowerJoint, state.UpperJoint, state.LowerJoint);
                KeepsLength(c.Drawn.TrackRodInner, c.Drawn.TrackRodOuter, inner, state.TrackRodOuter);
                KeepsLength(c.Drawn.LowerJoint, c.Drawn.TrackRodOuter, state.LowerJoint, state.TrackRodOuter);
                KeepsLength(c.Drawn.UpperJoint, c.Drawn.TrackRodOuter, state.UpperJoint, state.TrackRodOuter);
                KeepsLength(c.Drawn.UpperJoint, c.Drawn.WheelCentre, state.UpperJoint, state.WheelCentre);
                KeepsLength(c.Drawn.LowerJoint, c.Drawn.WheelCentre, state.LowerJoint, state.WheelCentre);
                KeepsLength(c.Drawn.TrackRodOuter, c.Drawn.WheelCentre, state.TrackRodOuter, state.WheelCentre);
                Assert.Equal(c.Drawn.WheelCentre.Z + c.Travel, state.WheelCentre.Z, 1e-12);
                Assert.Equal(1, state.SpinAxis.Norm, 1e-12);
            },
            iter: 400
        );

    [Fact]
    public void At_TheDrawnHeight_IsTheDrawing() =>
        s_drawing.Sample(
            drawn =>
            {
                var state = Stand(Corner.Of(drawn), drawn.WheelCentre.Z);
                Near(drawn.UpperJoint, state.UpperJoint);
                Near(drawn.LowerJoint, state.LowerJoint);
                Near(drawn.TrackRodOuter, state.TrackRodOuter);
                Near(drawn.WheelCentre, state.WheelCentre);
                Near(drawn.SpinAxis, state.SpinAxis);
            },
            iter: 300
        );

    [Fact]
    public void MovingTheWholeCar_ChangesNoAngle() =>
        Gen.Select(s_case, s_shift)
            .Sample(
                (c, shift) =>
                {
                    var by = 40 * shift;
                    var still = Stand(Corner.Of(c.Drawn), c.Drawn.WheelCentre.Z + c.Travel);
                    var moved = Stand(
                        new(CornerFrame.Of(c.Drawn).MovedBy(by), CornerParts.Of(c.Drawn)),
                        c.Drawn.WheelCentre.Z + c.Travel + by.Z
                    );
                    Near(still.WheelCentre + by, moved.WheelCentre);
                    Assert.Equal(WheelAngles.Of(still).CamberRadians, WheelAngles.Of(moved).CamberRadians, 1e-11);
                    Assert.Equal(WheelAngles.Of(still).ToeInRadians, WheelAngles.Of(moved).ToeInRadians, 1e-11);
                    Assert.Equal(WheelAngles.Of(still).CastorRadians, WheelAngles.Of(moved).CastorRadians, 1e-11);
                },
                iter: 200
            );

    [Fact]
    public void PerMetreOfTravel_IsTheSlopeOfThePosition() =>
        s_case.Sample(
            c =>
            {
                const double Step = 1e-5;
                var corner = Corner.Of(c.Drawn);
                var height = c.Drawn.WheelCentre.Z + c.Travel;
                var here = Stand(corner, height);
                var (up, down) = (Stand(corner, height + Step), Stand(corner, height - Step));
                // The square of the step times the third derivative, a few hundred per square metre, and rounding over the step.
                Near((1 / (2 * Step)) * (up.WheelCentre - down.WheelCentre), here.PerMetreOfTravel.VelocityAt(here.WheelCentre), 2e-7);
                Near(
                    (1 / (2 * Step)) * (up.TrackRodOuter - down.TrackRodOuter),
                    here.PerMetreOfTravel.VelocityAt(here.TrackRodOuter),
                    2e-7
                );
                Near((1 / (2 * Step)) * (up.SpinAxis - down.SpinAxis), Vector3.Cross(here.PerMetreOfTravel.Angular, here.SpinAxis), 2e-7);
            },
            iter: 200
        );

    [Fact]
    public void Solve_AllocatesNothing()
    {
        var corner = Corner.Of(Points);
        corner.Solve(Points.WheelCentre.Z, Points.TrackRodInner, out _);
        long Allocated()
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            for (var i = 0; i < 1000; i++)
            {
                corner.Solve(Points.WheelCentre.Z + (5e-5 * i), Points.TrackRodInner, out _);
            }

            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        // A collection that another test brings about counts the rest of this thread's own allocation block as used: the least of a few runs is the kernel's own.
        Assert.Equal(0, Enumerable.Range(0, 5).Min(_ => Allocated()));
    }

    private static CornerPoints Shifted(Vector3[] shifts, double camber, bool upperOnePiece, bool lowerOnePiece) =>
        new()
        {
            UpperFront = Points.UpperFront + shifts[0],
            UpperRear = Points.UpperRear + shifts[1],
            LowerFront = Points.LowerFront + shifts[2],
            LowerRear = Points.LowerRear + shifts[3],
            UpperJoint = Points.UpperJoint + shifts[4],
            LowerJoint = Points.LowerJoint + shifts[5],
            TrackRodInner = Points.TrackRodInner + shifts[6],
            TrackRodOuter = Points.TrackRodOuter + shifts[7],
            WheelCentre = Points.WheelCentre + shifts[8],
            SpinAxis = CornerPoints.SpinAxisOf(camber, -0.5 * camber),
            UpperMake = upperOnePiece ? ArmMake.OnePiece : ArmMake.TwoHalves,
            LowerMake = lowerOnePiece ? ArmMake.OnePiece : ArmMake.TwoHalves,
        };

    private static void KeepsLength(Vector3 a0, Vector3 b0, Vector3 a1, Vector3 b1) =>
        Assert.Equal(Vector3.Distance(a0, b0), Vector3.Distance(a1, b1), 1e-12);

    private static void Near(Vector3 expected, Vector3 actual, double within = 1e-11) =>
        Assert.True((expected - actual).Norm <= within, $"{expected} is {(expected - actual).Norm} from {actual}");
}
