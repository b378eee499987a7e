using Plumbmark.Engine.Bending;

namespace Plumbmark.Engine.Tests.Bending;

/// <summary>Moment, spring-back and residual stress against closed forms and textbook examples.</summary>
public class MomentCurvaturePublishedTests
{
    private static MomentCurvature Of(CrossSection section, double modulus, double yield, double hardening = 0) =>
        new(section, new Steel(modulus, yield, hardening));

    /// <summary>M/M_Y = 1.5(1 − 1/(3k²)) and the residual k − M/M_Y; printed in most strength-of-materials books (digits: own computation).</summary>
    [Theory]
    [InlineData(1.25, 1.180000, 0.070000)]
    [InlineData(1.5, 1.277778, 0.222222)]
    [InlineData(2, 1.375, 0.625)]
    [InlineData(3, 1.444444, 1.555556)]
    [InlineData(5, 1.48, 3.52)]
    [InlineData(10, 1.495, 8.505)]
    public void Rectangle_MomentAndResidual(double k, double moment, double residual)
    {
        var curve = Of(CrossSection.Rectangle(0.03, 0.02), 205e9, 300e6);
        var curvature = k * curve.YieldCurvaturePerMetre;
        Assert.Equal(moment, curve.MomentAt(curvature) / curve.YieldMomentNewtonMetres, 1e-6);
        Assert.Equal(residual, curve.ResidualCurvature(curvature) / curve.YieldCurvaturePerMetre, 1e-6);
    }

    /// <summary>Own computation from the closed form of the round bar.</summary>
    [Theory]
    [InlineData(1.5, 1.347091)]
    [InlineData(2, 1.493660)]
    [InlineData(3, 1.604932)]
    [InlineData(5, 1.663904)]
    [InlineData(10, 1.689177)]
    public void Round_Moment(double k, double moment)
    {
        var curve = Of(CrossSection.Round(0.025), 205e9, 300e6);
        Assert.Equal(moment, curve.MomentAt(k * curve.YieldCurvaturePerMetre) / curve.YieldMomentNewtonMetres, 1e-6);
        Assert.Equal(moment, SpringBack.RoundMomentRatio(k), 1e-6);
    }

    /// <summary>F. P. Beer, E. R. Johnston et al., Mechanics of Materials, the 50 × 120 mm beam under 36.8 kN·m (from memory, recomputed).</summary>
    [Fact]
    public void Beam50By120_UnderPastYield()
    {
        var curve = Of(CrossSection.Rectangle(0.05, 0.12), 200e9, 240e6);
        Assert.Equal(28.8e3, curve.YieldMomentNewtonMetres, 1e-6);
        var curvature = curve.CurvatureFor(36.8e3);
        Assert.Equal(0.040, curve.Steel.YieldStrain / curvature, 1e-9); // elastic core half-depth 40 mm
        Assert.Equal(33.33, 1 / curvature, 0.005);
        Assert.Equal(225, 1 / curve.ResidualCurvature(curvature), 1e-6);
        Assert.Equal(-66.67e6, curve.ResidualStressAt(0.12, curvature), 0.005e6);
        Assert.Equal(35.56e6, curve.ResidualStressAt(0.06 + 0.040, curvature), 0.005e6);
    }

    /// <summary>A 50 × 100 mm beam under 24 kN·m, 240 MPa, 200 GPa: the question stands on a public page, the numbers are own computation.</summary>
    [Fact]
    public void Beam50By100_UnderPastYield()
    {
        var curve = Of(CrossSection.Rectangle(0.05, 0.10), 200e9, 240e6);
        Assert.Equal(20e3, curve.YieldMomentNewtonMetres, 1e-6);
        Assert.Equal(30e3, curve.PlasticMomentNewtonMetres, 1e-6);
        var curvature = curve.CurvatureFor(24e3);
        Assert.Equal(77.46e-3, 2 * curve.Steel.YieldStrain / curvature, 0.005e-3);
        Assert.Equal(32.27, 1 / curvature, 0.005);
    }

    /// <summary>N. E. Dowling, Mechanical Behavior of Materials, 5th ed., problem 14.8 (inputs from a public page; results own computation).</summary>
    [Theory]
    [InlineData(0.002, 2.13333e3, 0, 0)]
    [InlineData(0.004, 2.93333e3, -150e6, 0.00125)]
    [InlineData(0.008, 3.13333e3, -187.5e6, 0.0050625)]
    public void Dowling_14_8(double edgeStrain, double moment, double residualStress, double residualStrain)
    {
        var curve = Of(CrossSection.Rectangle(0.02, 0.04), 200e9, 400e6);
        var curvature = edgeStrain / 0.02;
        Assert.Equal(moment, curve.MomentAt(curvature), 0.01);
        Assert.Equal(residualStress, curve.ResidualStressAt(0.04, curvature), 1);
        Assert.Equal(residualStrain, curve.ResidualCurvature(curvature) * 0.02, 1e-9);
    }

    /// <summary>R_held/R_free = 4x³ − 3x + 1 says the same as 1 − (M/M_Y)/k with k = 1/(2x) (own computation).</summary>
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(0.49)]
    public void SpringBackFormula_AgreesWithMomentCurvature(double x)
    {
        var steel = new Steel(200e9, 250e6);
        const double Thickness = 0.002;
        var ratio = SpringBack.RadiusRatio(x * Thickness / steel.YieldStrain, Thickness, steel);
        var k = 1 / (2 * x);
        Assert.Equal(1 - (SpringBack.RectangleMomentRatio(k) / k), ratio, 1e-12);
        var curve = new MomentCurvature(CrossSection.Rectangle(0.01, Thickness), steel);
        var held = k * curve.YieldCurvaturePerMetre;
        Assert.Equal(curve.ResidualCurvature(held) / held, ratio, 1e-9);
    }

    /// <summary>S. Kalpakjian and S. R. Schmid, Manufacturing Engineering and Technology, spring-back example (from memory): 0.942, final radius 0.531 in.</summary>
    [Fact]
    public void Kalpakjian_SpringBackExample()
    {
        const double Psi = 6894.757293168;
        var ratio = SpringBack.RadiusRatio(0.5 * 0.0254, 0.0359 * 0.0254, new Steel(29e6 * Psi, 40e3 * Psi));
        Assert.Equal(0.942397, ratio, 1e-6);
        Assert.Equal(0.530562, 0.5 / ratio, 1e-6);
    }

    [Fact]
    public void StripBentBelowYield_SpringsBackFlat() => Assert.Equal(0, SpringBack.RadiusRatio(1, 0.001, new Steel(200e9, 250e6)));
}
