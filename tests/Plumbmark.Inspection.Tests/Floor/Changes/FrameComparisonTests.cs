namespace Plumbmark.Inspection.Floor.Changes;

public sealed class FrameComparisonTests
{
    private static FloorAnswer With(params (string Name, double Shift, double U)[] pairs) =>
        new(
            new OverallAnswer(Verdict.CannotTellYet, "", [], []),
            [],
            new AdjustmentSummary(0, null, null),
            [],
            [],
            [.. pairs.Select(p => new PairEstimate($"{p.Name}.L", $"{p.Name}.R", p.Shift, null, null, null, p.U, null, null, null))],
            [],
            [],
            [],
            [],
            []
        );

    [Fact]
    public void Compare_LargeChange_IsRealAndItsUncertaintyIsOfBothMoments()
    {
        var change = Assert.Single(FrameComparison.Of(With(("A", 0.008, 0.0003)), With(("A", 0.001, 0.0004))));
        Assert.Equal(-0.007, change.ChangeMetres, 1e-12); // metres, rounding
        Assert.Equal(0.0005, change.UMetres, 1e-12); // 3-4-5
        Assert.Equal(ChangeFinding.Real, change.Finding);
    }

    // 1.96 standard uncertainties is the two-sided 5 % point of the normal distribution (NIST/SEMATECH e-Handbook, 1.3.6.7.1: 0.97500 at 1.96).
    [Theory]
    [InlineData(1.95, ChangeFinding.CouldBeNoise)]
    [InlineData(1.97, ChangeFinding.Real)]
    public void Compare_OneValue_DecidesAtFivePercent(double standardised, ChangeFinding expected) =>
        Assert.Equal(expected, Assert.Single(FrameComparison.Of(With(("A", 0, 0)), With(("A", standardised * 0.001, 0.001)))).Finding);

    // Holm (1979), own computation: among three, the smallest p must be at most 0.05/3; 2.3 standard uncertainties (p = 0.0214) are not enough there,
    // though they would be alone.
    [Fact]
    public void Compare_ManyValues_AllowsForHowManyThereAre()
    {
        var before = With(("A", 0, 0), ("B", 0, 0), ("C", 0, 0));
        var after = With(("A", 0.0023, 0.001), ("B", 0.0001, 0.001), ("C", 0.0002, 0.001));
        Assert.All(FrameComparison.Of(before, after), c => Assert.Equal(ChangeFinding.CouldBeNoise, c.Finding));
    }

    [Fact]
    public void Compare_SameMoment_FindsNothing() =>
        Assert.All(
            FrameComparison.Of(With(("A", 0.008, 0.0003)), With(("A", 0.008, 0.0003))),
            c => Assert.Equal(ChangeFinding.CouldBeNoise, c.Finding)
        );

    [Fact]
    public void Compare_ValueMissingOnce_IsLeftOutRatherThanTakenAsZero() =>
        Assert.Equal(
            ["B.L", "B.R"],
            Assert.Single(FrameComparison.Of(With(("B", 0, 0.001)), With(("A", 0.01, 0.001), ("B", 0, 0.001)))).Points
        );
}
