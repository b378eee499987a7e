namespace Plumbmark.Web.Tests.Hostile;

/// <summary>A short run; bench/reliability sends many more.</summary>
public sealed class BrokenFormsFaults
{
    [Fact]
    public async Task BrokenForm_IsTakenOrRefusedInWords_AndChangesNothingWhenRefused()
    {
        var outcome = await BrokenForms.Run(inputs: 400, seed: 7);
        Assert.Empty(outcome.Findings.Select(f => $"{f.Key}: {f.Value}"));
        Assert.True(outcome.Forms > 30, $"Only {outcome.Forms} forms were found.");
        Assert.InRange(outcome.Taken, 40, 360); // else they were all broken, or none was
    }
}
