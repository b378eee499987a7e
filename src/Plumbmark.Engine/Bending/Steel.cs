namespace Plumbmark.Engine.Bending;

/// <summary>A steel as a straight line up to yield and a flatter straight line beyond it, the same in tension and compression.</summary>
/// <remarks>It has no memory: a part already bent the other way yields earlier (Bauschinger), which <see cref="BiteModel"/> learns instead.</remarks>
public sealed record Steel
{
    /// <summary>A steel by its three numbers.</summary>
    /// <param name="elasticModulusPascals">Young's modulus E, Pa.</param>
    /// <param name="yieldStressPascals">Yield stress σ_Y, Pa.</param>
    /// <param name="hardeningRatio">Slope beyond yield over E, 0 (perfectly plastic) up to but not including 1.</param>
    public Steel(double elasticModulusPascals, double yieldStressPascals, double hardeningRatio = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(elasticModulusPascals);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(yieldStressPascals);
        if (!(hardeningRatio is >= 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(hardeningRatio), hardeningRatio, "The slope beyond yield lies from 0 to below E.");
        }

        ElasticModulusPascals = elasticModulusPascals;
        YieldStressPascals = yieldStressPascals;
        HardeningRatio = hardeningRatio;
    }

    /// <summary>Young's modulus E, Pa.</summary>
    public double ElasticModulusPascals { get; }

    /// <summary>Yield stress σ_Y, Pa.</summary>
    public double YieldStressPascals { get; }

    /// <summary>Slope beyond yield over E; 0 is perfectly plastic.</summary>
    public double HardeningRatio { get; }

    /// <summary>Strain at first yield, σ_Y / E.</summary>
    public double YieldStrain => YieldStressPascals / ElasticModulusPascals;
}
