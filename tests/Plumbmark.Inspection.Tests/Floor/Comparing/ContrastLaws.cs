using CsCheck;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Inspection.Tests.Floor.Comparing;

public class ContrastLaws
{
    [Fact]
    public void TurningAndShiftingTheSurvey_ChangesNoCheck() =>
        Gen.Select(Gen.Int[1, 10_000], Gen.Double[-3, 3], Gen.Double[-5, 5], Gen.Double[-5, 5])
            .Sample(
                (seed, angle, dx, dy) =>
                {
                    var random = new Random(seed);
                    var frame = PlacedFrames.Of(new TrueFrame(FrameDesign.Random(random)), 0.5, random);
                    var (a, b) = (Values(frame), Values(frame.Moved(angle, dx, dy)));
                    Assert.Equal(a.Count, b.Count);
                    for (var i = 0; i < a.Count; i++)
                    {
                        Assert.Equal(a[i].Value, b[i].Value, 1e-8); // a hundredth of a micrometre over metres of shift
                        Assert.Equal(a[i].U, b[i].U, 1e-8);
                    }
                },
                iter: 30
            );

    [Fact]
    public void MirroringTheFrame_TurnsSideShiftAndStaggerOver()
    {
        var random = new Random(5);
        var design = FrameDesign.Random(random);
        var bent = Values(PlacedFrames.Of(new TrueFrame(design).Bend("B.L", 3, 2, 1), 0.5));
        var mirrored = Values(PlacedFrames.Of(new TrueFrame(design).Bend("B.R", 3, -2, 1), 0.5));
        foreach (var (a, b) in bent.Zip(mirrored))
        {
            Assert.Equal(-a.Value, b.Value, 1e-5);
        }
    }

    private static List<(double Value, double U)> Values(MeasuredFrame frame)
    {
        var placed = FramePlacing.InOwnAxes(frame, []);
        var contrasts = Contrasts.Of(placed);
        var lie = FrameLie.Of(placed, contrasts);
        return
        [
            .. Enumerable
                .Range(0, placed.Pairs.Count)
                .SelectMany(p =>
                    new[] { ContrastKind.Middle, ContrastKind.Stagger, ContrastKind.Level }.Select(k => contrasts.Sides(k, p)!)
                )
                .Select(c => lie.Adjust(c)!)
                .Select(a => (a.ValueMetres, a.UMetres)),
        ];
    }
}
