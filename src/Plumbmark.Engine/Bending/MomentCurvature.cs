namespace Plumbmark.Engine.Bending;

/// <summary>Bending moment against curvature for one section of one steel, loaded from a stress-free start; plane sections stay plane.</summary>
/// <remarks>
/// Assumes the stress-strain lines of <see cref="Steel"/> and no axial force. With ε = κ(y − y₀) and clip() at ±ε_Y the stress is
/// σ = E_t·ε + (E − E_t)·clip(ε), so force and moment follow in closed form from the moments of the section below the two yield fronts
/// y₀ ± ε_Y/κ. Only the neutral axis y₀ of a section without a horizontal middle line has to be searched for (N(y₀) = 0).
/// Source: own derivation; the classical theory is in W. Prager and P. G. Hodge, Theory of Perfectly Plastic Solids (1951), ch. 2.
/// </remarks>
public sealed class MomentCurvature
{
    private const int NeutralAxisSteps = 100;

    private readonly CrossSection _section;
    private readonly Steel _steel;

    /// <summary>The curve of a section and a steel.</summary>
    public MomentCurvature(CrossSection section, Steel steel)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(steel);
        _section = section;
        _steel = steel;
        StiffnessNewtonSquareMetres = steel.ElasticModulusPascals * section.SecondMomentQuarticMetres;
        YieldMomentNewtonMetres = steel.YieldStressPascals * section.ElasticModulusCubicMetres;
        YieldCurvaturePerMetre = YieldMomentNewtonMetres / StiffnessNewtonSquareMetres;
        PlasticMomentNewtonMetres = steel.YieldStressPascals * section.PlasticModulusCubicMetres;
    }

    /// <summary>The section.</summary>
    public CrossSection Section => _section;

    /// <summary>The steel.</summary>
    public Steel Steel => _steel;

    /// <summary>E·I, N·m².</summary>
    public double StiffnessNewtonSquareMetres { get; }

    /// <summary>Moment at first yield of the outermost fibre, N·m.</summary>
    public double YieldMomentNewtonMetres { get; }

    /// <summary>Curvature at first yield, 1/m.</summary>
    public double YieldCurvaturePerMetre { get; }

    /// <summary>Moment of the fully plastic section without hardening, N·m; the limit of the moment when the hardening ratio is 0.</summary>
    public double PlasticMomentNewtonMetres { get; }

    /// <summary>Moment at a curvature, N·m. Odd: a negative curvature gives the moment of the section turned over.</summary>
    public double MomentAt(double curvaturePerMetre)
    {
        if (Math.Abs(curvaturePerMetre) <= YieldCurvaturePerMetre)
        {
            return StiffnessNewtonSquareMetres * curvaturePerMetre;
        }

        var k = Math.Abs(curvaturePerMetre);
        return Math.Sign(curvaturePerMetre) * Resultants(k, NeutralAxisAt(k)).Moment;
    }

    /// <summary>Curvature that needs a moment, 1/m; infinite at or beyond the plastic moment of an unhardened section.</summary>
    public double CurvatureFor(double momentNewtonMetres)
    {
        var m = Math.Abs(momentNewtonMetres);
        if (m <= YieldMomentNewtonMetres)
        {
            return momentNewtonMetres / StiffnessNewtonSquareMetres;
        }

        if (_steel.HardeningRatio == 0 && m >= PlasticMomentNewtonMetres)
        {
            return Math.Sign(momentNewtonMetres) * double.PositiveInfinity;
        }

        var high = 2 * YieldCurvaturePerMetre;
        while (MomentAt(high) < m)
        {
            high *= 2;
        }

        return Math.Sign(momentNewtonMetres) * Bracketed.Root(k => MomentAt(k) - m, high / 2, high);
    }

    /// <summary>Curvature left after a moment that reached <paramref name="curvaturePerMetre"/> is taken off again: κ − M/(E·I), 1/m.</summary>
    /// <remarks>Assumes that unloading is elastic, which holds while the moment taken off is below twice the yield moment.</remarks>
    public double ResidualCurvature(double curvaturePerMetre) =>
        curvaturePerMetre - (MomentAt(curvaturePerMetre) / StiffnessNewtonSquareMetres);

    /// <summary>Height of the neutral axis at a curvature, m.</summary>
    public double NeutralAxisAt(double curvaturePerMetre)
    {
        var k = Math.Abs(curvaturePerMetre);
        var y0 = _section.CentroidMetres;
        if (k <= YieldCurvaturePerMetre)
        {
            return y0;
        }

        // N falls steadily as y₀ rises, so Newton inside a bracket that the sign of N keeps tightening cannot leave it.
        var (low, high) = (_section.BottomMetres, _section.TopMetres);
        var scale = _steel.YieldStressPascals * _section.AreaSquareMetres;
        for (var i = 0; i < NeutralAxisSteps; i++)
        {
            var (force, slope, _) = Resultants(k, y0);
            if (Math.Abs(force) <= 1e-14 * scale)
            {
                break;
            }

            (low, high) = force > 0 ? (y0, high) : (low, y0);
            var next = slope < 0 ? y0 - (force / slope) : double.NaN;
            next = next > low && next < high ? next : low + ((high - low) / 2);
            if (next <= low || next >= high)
            {
                break;
            }

            y0 = next;
        }

        return y0;
    }

    /// <summary>The larger of the two outermost strains at a curvature, without sign.</summary>
    public double OuterStrainAt(double curvaturePerMetre)
    {
        var y0 = NeutralAxisAt(curvaturePerMetre);
        return Math.Abs(curvaturePerMetre) * Math.Max(_section.TopMetres - y0, y0 - _section.BottomMetres);
    }

    /// <summary>The strain of the fibre nearest the ram at a curvature, without sign.</summary>
    public double RamSideStrainAt(double curvaturePerMetre) =>
        Math.Abs(curvaturePerMetre) * (_section.TopMetres - NeutralAxisAt(curvaturePerMetre));

    /// <summary>Stress at a height under a curvature, Pa; squeezed fibres are positive here, as the top is under a positive curvature.</summary>
    public double StressAt(double heightMetres, double curvaturePerMetre)
    {
        var strain = curvaturePerMetre * (heightMetres - NeutralAxisAt(curvaturePerMetre));
        var inside = Math.Clamp(strain, -_steel.YieldStrain, _steel.YieldStrain);
        return _steel.ElasticModulusPascals * (inside + (_steel.HardeningRatio * (strain - inside)));
    }

    /// <summary>Stress left at a height after that curvature is let go: the loaded stress less M·y/I, Pa.</summary>
    public double ResidualStressAt(double heightMetres, double curvaturePerMetre) =>
        StressAt(heightMetres, curvaturePerMetre)
        - (MomentAt(curvaturePerMetre) * (heightMetres - _section.CentroidMetres) / _section.SecondMomentQuarticMetres);

    // κ - curvature - 1/m;  y₀ - neutral axis - m;  ε_Y - yield strain;  E_t = h·E
    //   N = E_t·κ·S₁ + (E − E_t)(κ·S₁core + ε_Y(A_top − A_bottom)),  dN/dy₀ = −κ(E_t·A + (E − E_t)·A_core)
    //   M = E_t·κ·S₂ + (E − E_t)(κ·S₂core + ε_Y(S₁top − S₁bottom)),  all about y₀
    private (double Force, double Slope, double Moment) Resultants(double k, double y0)
    {
        var reach = _steel.YieldStrain / k;
        var whole = _section.Below(_section.TopMetres).AboutLineHigherBy(y0);
        var bottom = _section.Below(y0 - reach).AboutLineHigherBy(y0);
        var belowTop = _section.Below(y0 + reach).AboutLineHigherBy(y0);
        var (core, top) = (belowTop - bottom, whole - belowTop);
        var tangent = _steel.HardeningRatio * _steel.ElasticModulusPascals;
        var rest = _steel.ElasticModulusPascals - tangent;
        var force = (tangent * k * whole.First) + (rest * ((k * core.First) + (_steel.YieldStrain * (top.Area - bottom.Area))));
        var slope = -k * ((tangent * whole.Area) + (rest * core.Area));
        var moment = (tangent * k * whole.Second) + (rest * ((k * core.Second) + (_steel.YieldStrain * (top.First - bottom.First))));
        return (force, slope, moment);
    }
}
