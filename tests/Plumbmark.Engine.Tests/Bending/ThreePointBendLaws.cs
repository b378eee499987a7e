using CsCheck;
using Plumbmark.Engine.Bending;

namespace Plumbmark.Engine.Tests.Bending;

/// <summary>What holds for any bar in the press.</summary>
public class ThreePointBendLaws
{
    private static readonly Gen<CrossSection> s_section = Gen.OneOf(
        Gen.Select(Gen.Double[0.01, 0.06], Gen.Double[0.005, 0.06], CrossSection.Rectangle),
        Gen.Double[0.01, 0.05].Select(CrossSection.Round),
        Gen.Select(
            Gen.Double[0.02, 0.05],
            Gen.Double[0.03, 0.08],
            Gen.Double[0.0015, 0.004],
            (w, d, t) => CrossSection.Channel(w, d, t, t)
        ),
        Gen.Select(Gen.Double[0.03, 0.05], Gen.Double[0.02, 0.05], Gen.Double[0.01, 0.02], Gen.Double[0.0015, 0.003], CrossSection.Hat)
    );

    /// <summary>The one integral over curvature against the dummy-load integral over the length, arm by arm, in 4,000 slices.</summary>
    [Fact]
    public void Travel_AgreesWithTheDummyLoadIntegralAlongTheBar() =>
        Gen.Select(s_section, Gen.Double[0, 0.03], Gen.Double[0.1, 0.5], Gen.Double[0.1, 0.5], Gen.Double[0.5, 6])
            .Sample(
                (section, hardening, a, b, k) =>
                {
                    var bend = new ThreePointBend(new MomentCurvature(section, new Steel(205e9, 300e6, hardening)), a, b);
                    var curvature = k * bend.Curve.YieldCurvaturePerMetre;
                    var peak = bend.Curve.MomentAt(curvature);
                    const int Slices = 400;
                    double sum = 0;
                    for (var i = 0; i < Slices; i++)
                    {
                        // Crowded towards the ram (share = 1 − t²), where the curvature of an unhardened hinge shoots up.
                        var t = (i + 0.5) / Slices;
                        var share = 1 - (t * t);
                        sum += bend.Curve.CurvatureFor(share * peak) * share * 2 * t / Slices;
                    }

                    var dummy = a * b / (a + b);
                    Assert.Equal(1, bend.TravelAtCurvature(curvature) / (sum * dummy * (a + b)), 2e-4); // the midpoint rule's own error
                },
                iter: 15
            );

    /// <summary>The table behind the planner, summed up coarsely, against the exact integral.</summary>
    [Fact]
    public void SpringBackTable_AgreesWithThreePointBend() =>
        Gen.Select(s_section, Gen.Double[0, 0.03], Gen.Double[1.05, 8])
            .Sample(
                (section, hardening, k) =>
                {
                    var table = new SpringBackTable(section, 0.0015, [hardening]);
                    var bend = new ThreePointBend(new MomentCurvature(section, new Steel(200e9, 300e6, hardening)), 0.2, 0.1);
                    var bite = bend.At(k * bend.Curve.YieldCurvaturePerMetre);
                    var ratio = bite.SetMetres / bend.YieldTravelMetres;
                    Assert.Equal(bite.SpringBackMetres / bend.YieldTravelMetres, table.SpringBackRatio(0, ratio), 0.01);
                    Assert.Equal(1, table.OuterStrain(0, ratio) / bite.OuterStrain, 0.03);
                },
                iter: 40
            );

    [Fact]
    public void ElasticTravel_IsTheHandbookFormula() => // F·a²·b²/(3·E·I·L)
        Gen.Select(s_section, Gen.Double[0.1, 0.5], Gen.Double[0.1, 0.5])
            .Sample(
                (section, a, b) =>
                {
                    var bend = new ThreePointBend(new MomentCurvature(section, new Steel(205e9, 300e6)), a, b);
                    var load = bend.YieldLoadNewtons / 2;
                    var handbook = load * a * a * b * b / (3 * 205e9 * section.SecondMomentQuarticMetres * (a + b));
                    Assert.Equal(1, bend.TravelAtLoad(load) / handbook, 1e-12);
                    Assert.Equal(bend.TravelAtLoad(load), new ThreePointBend(bend.Curve, b, a).TravelAtLoad(load), 1e-15);
                },
                iter: 100
            );

    [Fact]
    public void SetRisesWithLoad_AndSpringBackIsLoadOverStiffness() =>
        Gen.Select(s_section, Gen.Double[0, 0.03], Gen.Double[1.01, 5], Gen.Double[1.01, 2])
            .Sample(
                (section, hardening, k, step) =>
                {
                    var bend = new ThreePointBend(new MomentCurvature(section, new Steel(205e9, 300e6, hardening)), 0.15, 0.2);
                    var (low, high) = (
                        bend.At(k * bend.Curve.YieldCurvaturePerMetre),
                        bend.At(k * step * bend.Curve.YieldCurvaturePerMetre)
                    );
                    Assert.True(low.SetMetres < high.SetMetres);
                    Assert.True(low.SetMetres > 0);
                    Assert.Equal(high.LoadNewtons / bend.StiffnessNewtonsPerMetre, high.SpringBackMetres, 1e-12);
                },
                iter: 60
            );
}
