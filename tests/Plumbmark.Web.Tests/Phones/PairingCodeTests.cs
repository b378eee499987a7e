using Plumbmark.Web.Phones;

namespace Plumbmark.Web.Tests.Phones;

/// <summary>The code on the laptop's screen.</summary>
public sealed class PairingCodeTests
{
    [Fact]
    public void Try_TooOld_IsNotGood()
    {
        var clock = new HandClock();
        var pairing = new PairingCode(clock);
        var code = pairing.MakeNew();
        clock.Now += PairingCode.Lifetime;
        Assert.Null(pairing.Good());
        Assert.Equal(PairingCode.Outcome.NoneGood, pairing.Try(code));
    }

    [Fact]
    public void Try_JustInTime_WithAGapAsItIsShown_IsRight()
    {
        var clock = new HandClock();
        var pairing = new PairingCode(clock);
        var code = pairing.MakeNew();
        clock.Now += PairingCode.Lifetime - TimeSpan.FromSeconds(1);
        Assert.Equal(PairingCode.Outcome.Right, pairing.Try($"{code[..3]} {code[3..]}"));
        Assert.Equal(PairingCode.Outcome.NoneGood, pairing.Try(code));
    }

    [Fact]
    public void Try_FiveWrong_UsesItUp_AndANewOneIsNotTheOldOne()
    {
        var pairing = new PairingCode(new HandClock());
        var code = pairing.MakeNew();
        for (var i = 1; i < PairingCode.Tries; i++)
        {
            Assert.Equal(PairingCode.Outcome.Wrong, pairing.Try("no"));
        }

        Assert.Equal(PairingCode.Outcome.NoneGood, pairing.Try("no"));
        Assert.True(pairing.WasTriedTooOften);
        Assert.Equal(PairingCode.Outcome.NoneGood, pairing.Try(code));
        pairing.MakeNew();
        Assert.False(pairing.WasTriedTooOften);
    }

    [Fact]
    public void MakeNew_IsSixDigits_AndDiffers()
    {
        var pairing = new PairingCode(new HandClock());
        var codes = Enumerable.Range(0, 50).Select(_ => pairing.MakeNew()).ToList();
        Assert.All(codes, c => Assert.Matches("^[0-9]{6}$", c));
        Assert.InRange(codes.Distinct().Count(), 45, 50);
    }

    /// <summary>A clock set by hand.</summary>
    private sealed class HandClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 5, 31, 20, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
