namespace Plumbmark.Engine.Bending;

/// <summary>A bar on two supports with the ram between them, loaded past yield and let go: load, travel and the set that stays.</summary>
/// <remarks>
/// <para>Assumes free supports, small slopes, no shear deflection, and the curve of <see cref="MomentCurvature"/> for the way down; the way back up is elastic.</para>
/// <para>With arms a and b on either side of the ram and M̂ = F·a·b/(a+b) under it, the dummy-load integral of the curvature over both arms
/// becomes, by parts, one integral over curvature: δ = a·b/(2·M̂²)·∫₀^κ̂ (M̂² − M(κ)²) dκ (own derivation; for an unhardened rectangle
/// with the ram in the middle it gives <see cref="CentreLoadedRectangle"/>).</para>
/// </remarks>
public sealed class ThreePointBend
{
    private const double QuadratureTolerance = 1e-10;
    private const double LargestCurvatureRatio = 1e4; // a hinge: the moment is then within 10⁻⁸ of the plastic one

    private readonly double _armProduct;

    /// <summary>A bar of one section over a span.</summary>
    /// <param name="curve">Moment against curvature.</param>
    /// <param name="leftArmMetres">From the left support to the ram, m.</param>
    /// <param name="rightArmMetres">From the ram to the right support, m.</param>
    public ThreePointBend(MomentCurvature curve, double leftArmMetres, double rightArmMetres)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(leftArmMetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rightArmMetres);
        Curve = curve;
        LeftArmMetres = leftArmMetres;
        RightArmMetres = rightArmMetres;
        _armProduct = leftArmMetres * rightArmMetres;
        YieldLoadNewtons = LoadFor(curve.YieldMomentNewtonMetres);
        CollapseLoadNewtons = LoadFor(curve.PlasticMomentNewtonMetres);
        StiffnessNewtonsPerMetre = 3 * curve.StiffnessNewtonSquareMetres * SpanMetres / (_armProduct * _armProduct);
        YieldTravelMetres = YieldLoadNewtons / StiffnessNewtonsPerMetre;
    }

    /// <summary>Moment against curvature of the bar.</summary>
    public MomentCurvature Curve { get; }

    /// <summary>From the left support to the ram, m.</summary>
    public double LeftArmMetres { get; }

    /// <summary>From the ram to the right support, m.</summary>
    public double RightArmMetres { get; }

    /// <summary>From support to support, m.</summary>
    public double SpanMetres => LeftArmMetres + RightArmMetres;

    /// <summary>Load over travel under the ram while elastic, 3·E·I·L/(a²·b²), N/m.</summary>
    public double StiffnessNewtonsPerMetre { get; }

    /// <summary>Load at first yield, N.</summary>
    public double YieldLoadNewtons { get; }

    /// <summary>Travel of the ram at first yield, m: no bite below it leaves a set.</summary>
    public double YieldTravelMetres { get; }

    /// <summary>Load at which an unhardened bar folds at a hinge, M_p·L/(a·b), N.</summary>
    public double CollapseLoadNewtons { get; }

    /// <summary>Travel of the ram that brings the section under it to a curvature, m.</summary>
    public double TravelAtCurvature(double curvaturePerMetre)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(curvaturePerMetre);
        var peak = Curve.MomentAt(curvaturePerMetre);
        var yield = Curve.YieldCurvaturePerMetre;
        if (curvaturePerMetre <= yield)
        {
            return LoadFor(peak) / StiffnessNewtonsPerMetre;
        }

        // Elastic part in closed form; beyond yield with s = 1/κ, where a hinge of any sharpness is still a short interval.
        var elastic = (peak * peak * yield) - (Curve.YieldMomentNewtonMetres * Curve.YieldMomentNewtonMetres * yield / 3);
        var plastic = Quadrature.Integral(
            s =>
            {
                var m = Curve.MomentAt(1 / s);
                return (peak - m) * (peak + m) / (s * s);
            },
            1 / curvaturePerMetre,
            1 / yield,
            QuadratureTolerance
        );
        return _armProduct / (2 * peak * peak) * (elastic + plastic);
    }

    /// <summary>Load with which the section under the ram reaches a curvature, N.</summary>
    public double LoadAtCurvature(double curvaturePerMetre) => LoadFor(Curve.MomentAt(curvaturePerMetre));

    /// <summary>Set under the ram after a curvature was reached there and let go, m: travel less the elastic part of it.</summary>
    public double SetAtCurvature(double curvaturePerMetre) =>
        TravelAtCurvature(curvaturePerMetre) - (LoadAtCurvature(curvaturePerMetre) / StiffnessNewtonsPerMetre);

    /// <summary>Travel under a load, m; infinite at or beyond the collapse load of an unhardened bar.</summary>
    public double TravelAtLoad(double loadNewtons)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(loadNewtons);
        var curvature = Curve.CurvatureFor(loadNewtons * _armProduct / SpanMetres);
        return double.IsFinite(curvature) ? TravelAtCurvature(curvature) : double.PositiveInfinity;
    }

    /// <summary>The largest set the bar takes before an unhardened hinge folds, m; infinite with hardening.</summary>
    /// <remarks>The set falls short of its limit as 1/κ, so the limit is taken from two sharp hinges (Richardson).</remarks>
    public double LargestSetMetres
    {
        get
        {
            const double Sharp = 500; // times the curvature at first yield
            var yield = Curve.YieldCurvaturePerMetre;
            return Curve.Steel.HardeningRatio > 0
                ? double.PositiveInfinity
                : (2 * SetAtCurvature(2 * Sharp * yield)) - SetAtCurvature(Sharp * yield);
        }
    }

    /// <summary>The bite that leaves a wanted set.</summary>
    /// <param name="setMetres">Wanted set under the ram, m, not negative.</param>
    /// <returns>Its load, travel, curvature and strains, or null where the bar folds before it leaves that set.</returns>
    public Bite? BiteForSet(double setMetres)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(setMetres);
        var low = Curve.YieldCurvaturePerMetre;
        var high = low;
        while (SetAtCurvature(high) < setMetres)
        {
            if (high > LargestCurvatureRatio * low)
            {
                return null;
            }

            high *= 2;
        }

        return At(high > low ? Bracketed.Root(k => SetAtCurvature(k) - setMetres, high / 2, high, 1e-13) : low);
    }

    /// <summary>Everything about the bite that brings the section under the ram to a curvature.</summary>
    public Bite At(double curvaturePerMetre)
    {
        var (load, travel) = (LoadAtCurvature(curvaturePerMetre), TravelAtCurvature(curvaturePerMetre));
        return new(
            load,
            travel,
            travel - (load / StiffnessNewtonsPerMetre),
            curvaturePerMetre,
            Curve.OuterStrainAt(curvaturePerMetre),
            Curve.RamSideStrainAt(curvaturePerMetre)
        );
    }

    private double LoadFor(double momentNewtonMetres) => momentNewtonMetres * SpanMetres / _armProduct;
}
