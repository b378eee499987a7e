using Plumbmark.Testing.Fuzzing;

namespace Plumbmark.Store.Tests.Durability;

/// <summary>A short run; bench/reliability does many more.</summary>
public sealed class BrokenBackupsFaults
{
    [Fact]
    public void BrokenBackup_IsBroughtInWholeOrRefusedInASentence()
    {
        using var backups = new BrokenBackups();
        var outcome = FuzzRun.Run(backups.Subject, inputs: 150, seed: 7);
        Assert.Empty(outcome.Findings.Select(f => $"{f.Key}: {f.Value.Length} bytes"));
        Assert.InRange(outcome.Accepted, 5, outcome.Inputs - 5);
    }
}
