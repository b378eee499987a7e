using System.Collections.Immutable;
using CsCheck;
using Plumbmark.Engine.Bending;

namespace Plumbmark.Engine.Tests.Bending;

/// <summary>What holds for every section: the general strip integrator, hardening, equilibrium.</summary>
public class MomentCurvatureLaws
{
    private static readonly Gen<CrossSection> s_section = Gen.OneOf(
        Gen.Select(Gen.Double[0.01, 0.06], Gen.Double[0.005, 0.06], CrossSection.Rectangle),
        Gen.Double[0.01, 0.05].Select(CrossSection.Round),
        Gen.Select(Gen.Double[0.02, 0.06], Gen.Double[0.001, 0.005], CrossSection.Tube),
        Gen.Select(Gen.Double[0.02, 0.06], Gen.Double[0.02, 0.06], Gen.Double[0.0015, 0.004], CrossSection.Box),
        Gen.Select(
            Gen.Double[0.02, 0.05],
            Gen.Double[0.03, 0.08],
            Gen.Double[0.0015, 0.004],
            (w, d, t) => CrossSection.Channel(w, d, t, t)
        ),
        Gen.Select(
            Gen.Double[0.03, 0.05],
            Gen.Double[0.02, 0.05],
            Gen.Double[0.0015, 0.003],
            Gen.Bool,
            (w, d, t, up) => CrossSection.LyingChannel(w, d, t, t, up)
        ),
        Gen.Select(Gen.Double[0.03, 0.05], Gen.Double[0.02, 0.05], Gen.Double[0.01, 0.02], Gen.Double[0.0015, 0.003], CrossSection.Hat)
    );

    private static readonly Gen<Steel> s_steel = Gen.Select(
        Gen.Double[180e6, 900e6],
        Gen.Double[0, 0.05],
        (y, h) => new Steel(205e9, y, h)
    );

    /// <summary>The rectangle cut into uneven trapezia and integrated as a general section agrees with the closed form to 1e-6.</summary>
    [Fact]
    public void RectangleOfStrips_AgreesWithTheClosedForm() =>
        Gen.Select(Gen.Double[0.01, 0.05], Gen.Double[0.01, 0.05], Gen.Double[0.05, 0.95].Array[1, 6], Gen.Double[0.2, 40])
            .Sample(
                (width, depth, cuts, k) =>
                {
                    var heights = cuts.Order().Prepend(0).Append(1).Distinct().Select(c => c * depth).ToArray();
                    var strips = heights
                        .Zip(heights.Skip(1), (low, high) => new SectionPiece.Strip(low, high, width, width))
                        .ToImmutableArray();
                    var curve = new MomentCurvature(CrossSection.OfStrips(strips), new Steel(205e9, 300e6));
                    var moment = curve.MomentAt(k * curve.YieldCurvaturePerMetre) / curve.YieldMomentNewtonMetres;
                    Assert.Equal(SpringBack.RectangleMomentRatio(k), moment, 1e-6);
                },
                iter: 200
            );

    /// <summary>The partial moments of every shape against plain summation over 4,000 fibres, which knows nothing of pieces or closed forms.</summary>
    [Fact]
    public void Moment_AgreesWithSummingFibres() =>
        Gen.Select(s_section, s_steel, Gen.Double[0.3, 25])
            .Sample(
                (section, steel, k) =>
                {
                    var curve = new MomentCurvature(section, steel);
                    var curvature = k * curve.YieldCurvaturePerMetre;
                    var (force, moment) = Fibres(section, h => curve.StressAt(h, curvature));
                    Assert.Equal(0, force / (steel.YieldStressPascals * section.AreaSquareMetres), 2e-3);
                    Assert.Equal(1, curve.MomentAt(curvature) / moment, 1e-4);
                },
                iter: 40
            );

    [Fact]
    public void ResidualStresses_AreInBalance() =>
        Gen.Select(s_section, s_steel, Gen.Double[1.1, 10])
            .Sample(
                (section, steel, k) =>
                {
                    var curve = new MomentCurvature(section, steel);
                    var (force, moment) = Fibres(section, h => curve.ResidualStressAt(h, k * curve.YieldCurvaturePerMetre));
                    Assert.Equal(0, force / (steel.YieldStressPascals * section.AreaSquareMetres), 2e-3);
                    Assert.Equal(0, moment / curve.YieldMomentNewtonMetres, 2e-3);
                },
                iter: 40
            );

    [Fact]
    public void Moment_RisesWithCurvatureAndStaysBelowThePlasticMoment() =>
        Gen.Select(s_section, Gen.Double[0.1, 30], Gen.Double[1.001, 3])
            .Sample(
                (section, k, step) =>
                {
                    var curve = new MomentCurvature(section, new Steel(205e9, 300e6));
                    var (low, high) = (k * curve.YieldCurvaturePerMetre, k * step * curve.YieldCurvaturePerMetre);
                    Assert.True(curve.MomentAt(low) < curve.MomentAt(high) * (1 + 1e-12));
                    Assert.True(curve.MomentAt(high) <= curve.PlasticMomentNewtonMetres * (1 + 1e-12));
                },
                iter: 200
            );

    [Fact]
    public void CurvatureFor_UndoesMomentAt() =>
        Gen.Select(s_section, s_steel, Gen.Double[0.1, 12])
            .Sample(
                (section, steel, k) =>
                {
                    var curve = new MomentCurvature(section, steel);
                    var curvature = k * curve.YieldCurvaturePerMetre;
                    var back = curve.CurvatureFor(curve.MomentAt(curvature));
                    Assert.Equal(1, curve.MomentAt(back) / curve.MomentAt(curvature), 1e-12);
                },
                iter: 60
            );

    [Fact]
    public void UnhardenedSection_HasNoCurvatureForItsPlasticMoment()
    {
        var curve = new MomentCurvature(CrossSection.Rectangle(0.03, 0.02), new Steel(205e9, 300e6));
        Assert.Equal(double.PositiveInfinity, curve.CurvatureFor(curve.PlasticMomentNewtonMetres));
        Assert.Equal(double.NegativeInfinity, curve.CurvatureFor(-2 * curve.PlasticMomentNewtonMetres));
    }

    private static (double Force, double Moment) Fibres(CrossSection section, Func<double, double> stress)
    {
        const int Fibres = 4_000;
        var (force, moment) = (0.0, 0.0);
        var below = section.Below(section.BottomMetres);
        for (var i = 1; i <= Fibres; i++)
        {
            var height = section.BottomMetres + (section.DepthMetres * i / Fibres);
            var above = section.Below(height);
            var fibre = above - below;
            below = above;
            if (fibre.Area > 0)
            {
                var load = stress(fibre.First / fibre.Area) * fibre.Area;
                (force, moment) = (force + load, moment + (load * ((fibre.First / fibre.Area) - section.CentroidMetres)));
            }
        }

        return (force, moment);
    }
}
