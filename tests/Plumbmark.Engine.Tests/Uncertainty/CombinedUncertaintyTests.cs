using CsCheck;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

public class CombinedUncertaintyTests
{
    [Fact]
    public void NothingDoubted_IsZeroAndKnown()
    {
        var none = CombinedUncertainty.Of();
        Assert.Equal((0.0, double.PositiveInfinity), (none.StandardUncertainty, none.DegreesOfFreedom));
        Assert.Equal(0, none.Expanded(0.95));
        Assert.Equal(double.PositiveInfinity, CombinedUncertainty.Of(UncertaintyComponent.Standard("", 0, 3)).DegreesOfFreedom);
    }

    [Fact]
    public void VerySmallComponents_DoNotVanish()
    {
        // Fourth powers of 1e-90 are below the smallest double.
        var u = CombinedUncertainty.Of(UncertaintyComponent.Standard("a", 3e-90, 4), UncertaintyComponent.Standard("b", 4e-90));
        Assert.Equal(4 * 625.0 / 81, u.DegreesOfFreedom, tolerance: 1e-9);
    }

    [Fact]
    public void WhatIsNoUncertainty_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => UncertaintyComponent.Standard("", -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => UncertaintyComponent.Standard("", double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => UncertaintyComponent.Standard("", double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => UncertaintyComponent.Standard("", 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => UncertaintyComponent.Repeats("", new PooledRepeatability(1, 3), 0));
    }

    [Fact]
    public void EffectiveDegreesOfFreedom_LieBetweenTheLeastAndTheSum() =>
        Gen.Select(Gen.Double[0.001, 10], Gen.Int[1, 40])
            .Array[1, 6]
            .Sample(parts =>
            {
                var components = parts.Select(p => UncertaintyComponent.Standard("", p.Item1, p.Item2)).ToArray();
                var nu = EffectiveDegreesOfFreedom.Of(components);
                // GUM G.4.1: ν_eff ≤ Σ ν_i; and it is at least the smallest.
                Assert.InRange(nu, parts.Min(p => p.Item2) * (1 - 1e-12), parts.Sum(p => p.Item2) * (1 + 1e-12));
                // The unit does not matter, nor does the order.
                var other = components.Reverse().Select(c => c.Times(-25.4)).ToArray();
                Assert.Equal(nu, EffectiveDegreesOfFreedom.Of(other), tolerance: 1e-9 * nu);
                Assert.Equal(
                    25.4 * CombinedUncertainty.Of(components).StandardUncertainty,
                    CombinedUncertainty.Of(other).StandardUncertainty,
                    tolerance: 1e-9
                );
            });

    [Fact]
    public void Grouping_DoesNotChangeTheCombinedUncertainty() =>
        Gen.Select(Gen.Double[0, 5], Gen.Double[0, 5], Gen.Double[0, 5])
            .Sample(
                (a, b, c) =>
                {
                    var (x, y, z) = (
                        UncertaintyComponent.Standard("", a),
                        UncertaintyComponent.Standard("", b),
                        UncertaintyComponent.Standard("", c)
                    );
                    var grouped = CombinedUncertainty.Of(CombinedUncertainty.Of(x, y).AsComponent(""), z);
                    Assert.Equal(CombinedUncertainty.Of(x, y, z).StandardUncertainty, grouped.StandardUncertainty, tolerance: 1e-12);
                }
            );
}
