using Plumbmark.Inspection.Press;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Press;

/// <summary>Every refusal by itself: what the part is, what it is made of, what happened to it. And every question that must be answered first.</summary>
public class GateTests
{
    [Theory]
    [InlineData("steering-lever", RefusalReason.SteeringLever)]
    [InlineData("tie-rod", RefusalReason.TieRod)]
    [InlineData("upright", RefusalReason.Upright)]
    [InlineData("stub-axle", RefusalReason.StubAxle)]
    [InlineData("ball-joint", RefusalReason.BallJoint)]
    [InlineData("fulcrum-pin", RefusalReason.FulcrumPin)]
    [InlineData("spring", RefusalReason.Spring)]
    [InlineData("suspension-crossmember", RefusalReason.SuspensionCrossmember)]
    public void KindsOfPart_AreRefused(string kind, RefusalReason reason) =>
        RefusedFor(reason, PressJobSamples.LowerArm.With("\"kind\": \"wishbone\"", $"\"kind\": \"{kind}\""));

    [Fact]
    public void Castings_AreRefused()
    {
        RefusedFor(RefusalReason.Casting, PressJobSamples.LowerArm.With("\"make\": \"pressed\"", "\"make\": \"cast\""));
        RefusedFor(RefusalReason.Casting, PressJobSamples.LowerArm.With("mild-sheet", "cast-iron"));
    }

    [Theory]
    [InlineData("light-alloy", RefusalReason.LightAlloy)]
    [InlineData("alloy-steel", RefusalReason.AlloySteel)]
    [InlineData("unknown", RefusalReason.UnknownMaterial)]
    public void Metals_AreRefused(string material, RefusalReason reason) =>
        RefusedFor(reason, PressJobSamples.LowerArm.With("mild-sheet", material));

    [Fact]
    public void AForgedArm_IsRefused() =>
        RefusedFor(RefusalReason.ForgedArm, PressJobSamples.LowerArm.With("\"make\": \"pressed\"", "\"make\": \"forged\""));

    [Theory]
    [InlineData("cracked", RefusalReason.Cracked)]
    [InlineData("kinked", RefusalReason.Kinked)]
    [InlineData("torn", RefusalReason.Torn)]
    [InlineData("corroded", RefusalReason.Corroded)]
    [InlineData("welded", RefusalReason.Welded)]
    [InlineData("heated", RefusalReason.Heated)]
    [InlineData("pressedBefore", RefusalReason.BentTwice)]
    public void HistoryAnsweredYes_IsRefused(string question, RefusalReason reason) =>
        RefusedFor(reason, PressJobSamples.LowerArm.With($"\"{question}\": \"no\"", $"\"{question}\": \"yes\""));

    [Fact]
    public void ACrackFoundByATest_IsRefused() =>
        RefusedFor(RefusalReason.Cracked, PressJobSamples.LowerArm.With("\"found\": \"no\"", "\"found\": \"yes\""));

    [Theory]
    [InlineData("cracked")]
    [InlineData("kinked")]
    [InlineData("torn")]
    [InlineData("corroded")]
    [InlineData("welded")]
    [InlineData("heated")]
    [InlineData("pressedBefore")]
    public void AnUnansweredQuestion_IsAskedAndNeverTakenAsNo(string question) =>
        AskedFor(question, PressJobSamples.LowerArm.With($"\"{question}\": \"no\"", $"\"{question}\": null"));

    [Theory]
    [InlineData("\"kind\": \"wishbone\"", "kind")]
    [InlineData("\"make\": \"pressed\"", "make")]
    [InlineData("\"material\": \"mild-sheet\"", "material")]
    public void WhatIsNotTold_IsAsked(string piece, string topic) =>
        AskedFor(topic, PressJobSamples.LowerArm.With(piece, piece[..piece.IndexOf(':', StringComparison.Ordinal)] + ": null"));

    [Fact]
    public void WithoutACrackTestBefore_ItIsAsked()
    {
        AskedFor("crackTest", PressJobSamples.LowerArm.With("{ \"id\": \"t1\", \"method\": \"dye\", \"found\": \"no\" }", ""));
        AskedFor("crackTest", PressJobSamples.LowerArm.With("\"dye\"", "\"eye\"")); // looking is not testing
    }

    [Fact]
    public void ATestAfterABite_IsNotTheOneBeforeTheFirst()
    {
        var job = PressFiles.Job(PressJobSamples.LowerArm);
        var before = Assert.Single(job.CrackTests);
        var after = before with { Id = "t2", AfterBite = "b1" };
        var asking = Assert.IsType<GateOutcome.Asking>(Gate.Examine(job with { CrackTests = [after] }));
        Assert.Equal("crackTest", Assert.Single(asking.Questions).Topic);
        Assert.IsType<GateOutcome.Open>(Gate.Examine(job with { CrackTests = [after, before] }));
    }

    [Fact]
    public void OneTestOfSeveralThatFoundACrack_IsEnough()
    {
        const string Clear = "{ \"id\": \"t1\", \"method\": \"dye\", \"found\": \"no\" }";
        RefusedFor(
            RefusalReason.Cracked,
            PressJobSamples.LowerArm.With(Clear, $"{Clear}, {{ \"id\": \"t2\", \"method\": \"magnetic\", \"found\": \"yes\" }}")
        );
    }

    // A crack that is both answered and found by a test is one reason, told once; so is a casting of cast iron.
    [Fact]
    public void OneReasonFoundTwice_IsToldOnce() =>
        RefusedFor(
            RefusalReason.Cracked,
            PressJobSamples.LowerArm.With("\"found\": \"no\"", "\"found\": \"yes\"").With("\"cracked\": \"no\"", "\"cracked\": \"yes\"")
        );

    [Fact]
    public void AForgedBracket_NeedsMagneticParticles()
    {
        var bracket = PressJobSamples
            .LowerArm.With("\"make\": \"pressed\"", "\"make\": \"forged\"")
            .With("\"kind\": \"wishbone\"", "\"kind\": \"bracket\"");
        AskedFor("crackTest", bracket);
        Assert.IsType<GateOutcome.Open>(Gate.Examine(PressFiles.Job(bracket.With("\"dye\"", "\"magnetic\""))));
    }

    [Fact]
    public void ASoundLookingArm_IsLetThrough() => Assert.IsType<GateOutcome.Open>(Gate.Examine(PressFiles.Job(PressJobSamples.LowerArm)));

    [Fact]
    public void SeveralReasons_AreAllTold()
    {
        var job = PressFiles.Job(
            PressJobSamples
                .LowerArm.With("\"kind\": \"wishbone\"", "\"kind\": \"upright\"")
                .With("\"heated\": \"no\"", "\"heated\": \"yes\"")
        );
        var refused = Assert.IsType<GateOutcome.Refused>(Gate.Examine(job));
        Assert.Equal([RefusalReason.Upright, RefusalReason.Heated], refused.Refusals.Select(r => r.Reason));
    }

    [Fact]
    public void EveryReason_SaysWhatWhyAndWhatInstead()
    {
        foreach (var reason in Enum.GetValues<RefusalReason>())
        {
            var refusal = GateWords.For(reason);
            Assert.Equal(reason, refusal.Reason);
            Assert.All([refusal.What, refusal.Why, refusal.Instead], s => Assert.EndsWith(".", s, StringComparison.Ordinal));
        }
    }

    /// <summary>No heat and no word that a part is sound may ever come out of the sentences.</summary>
    [Fact]
    public void NoSentence_OffersHeatOrCallsAPartSound()
    {
        var sentences = Enum.GetValues<RefusalReason>().Select(GateWords.For).SelectMany(r => new[] { r.What, r.Why, r.Instead });
        Assert.All(sentences, s => Assert.DoesNotContain("warm", s, StringComparison.OrdinalIgnoreCase));
        Assert.All(sentences, s => Assert.DoesNotContain("sound", s, StringComparison.OrdinalIgnoreCase));
        Assert.Contains(GateWords.Cautions, c => c.StartsWith("No heat, ever", StringComparison.Ordinal));
    }

    private static void RefusedFor(RefusalReason reason, string text)
    {
        var refused = Assert.IsType<GateOutcome.Refused>(Gate.Examine(PressFiles.Job(text)));
        Assert.Equal(reason, Assert.Single(refused.Refusals).Reason);
        Assert.IsType<PressState.Refused>(PressFiles.Report(text).State);
    }

    private static void AskedFor(string topic, string text)
    {
        var asking = Assert.IsType<GateOutcome.Asking>(Gate.Examine(PressFiles.Job(text)));
        Assert.Equal(topic, Assert.Single(asking.Questions).Topic);
        Assert.IsType<PressState.Asking>(PressFiles.Report(text).State);
    }
}
