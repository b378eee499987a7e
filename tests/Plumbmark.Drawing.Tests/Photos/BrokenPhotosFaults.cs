using Plumbmark.Testing.Fuzzing;

namespace Plumbmark.Drawing.Tests.Photos;

/// <summary>A short run; bench/reliability does a million.</summary>
public sealed class BrokenPhotosFaults
{
    [Fact]
    public void BrokenPhoto_IsTakenWholeOrRefusedInASentence()
    {
        var outcome = FuzzRun.Run(BrokenPhotos.Subject, inputs: 1500, seed: 7);
        Assert.Empty(outcome.Findings.Select(f => $"{f.Key}: {Convert.ToBase64String(f.Value)}"));
        Assert.InRange(outcome.Accepted, 50, outcome.Inputs - 50); // else the inputs are all broken, or none is
    }
}
