using Plumbmark.Reliability.Campaigns;

namespace Plumbmark.Store.Tests.Durability;

/// <summary>A few kills of a writing process; bench/reliability does a thousand.</summary>
public sealed class KillsFaults
{
    [Fact]
    public async Task AWriterKilledAtAnyMoment_LosesNothingAcknowledged()
    {
        var outcome = await Kills.Run(kills: 8, seed: 11);
        Assert.Empty(outcome.Findings);
        Assert.Equal((0, 0), (outcome.Lost, outcome.Twice));
        Assert.True(outcome.Acknowledged > 3, $"Only {outcome.Acknowledged} readings were acknowledged: the test did not test.");
    }
}
