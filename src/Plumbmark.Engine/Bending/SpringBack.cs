namespace Plumbmark.Engine.Bending;

/// <summary>Closed forms for a flat strip bent to one radius and let go.</summary>
public static class SpringBack
{
    // R - bend radius to the middle of the sheet while held - m;  Y - yield stress - Pa;  E - Young's modulus - Pa;  T - thickness - m
    //   R_held / R_free = 4x³ − 3x + 1,  x = R·Y / (E·T)
    // S. Kalpakjian and S. R. Schmid, Manufacturing Engineering and Technology, ch. 16 (from memory; the same formula stands on several public pages).

    /// <summary>Radius held over radius after release; 1 is no spring-back, 0 is a strip that springs back flat.</summary>
    /// <param name="heldRadiusMetres">Radius while held, m.</param>
    /// <param name="thicknessMetres">Thickness, m.</param>
    /// <param name="steel">The steel; its hardening is left out by this formula.</param>
    public static double RadiusRatio(double heldRadiusMetres, double thicknessMetres, Steel steel)
    {
        ArgumentNullException.ThrowIfNull(steel);
        var x = heldRadiusMetres * steel.YieldStrain / thicknessMetres;
        return x >= 0.5 ? 0 : (4 * x * x * x) - (3 * x) + 1;
    }

    /// <summary>M / M_Y of an unhardened rectangle at k times the yield curvature: 1.5(1 − 1/(3k²)) beyond yield.</summary>
    public static double RectangleMomentRatio(double k) => k <= 1 ? k : 1.5 * (1 - (1 / (3 * k * k)));

    /// <summary>M / M_Y of an unhardened solid round at k times the yield curvature.</summary>
    /// <remarks>
    /// With sin a = 1/k: M/M_Y = (2k/π)(a − ¼·sin 4a) + (16/(3π))·cos³a (own derivation: elastic core of half-height R/k plus two yielded caps).
    /// </remarks>
    public static double RoundMomentRatio(double k)
    {
        if (k <= 1)
        {
            return k;
        }

        var a = Math.Asin(1 / k);
        var cosine = Math.Cos(a);
        return (2 * k / Math.PI * (a - (Math.Sin(4 * a) / 4))) + (16 / (3 * Math.PI) * cosine * cosine * cosine);
    }
}
